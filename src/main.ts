/** Where the page starts: styles, the bench as it was left, then the program into its place. */
import { mount } from 'svelte';
import './view/style/font.css';
import './view/style/tokens.css';
import './view/style/base.css';
import './view/style/print.css';
import { openBench } from './state/kept-bench.svelte.ts';
import { browserShelf } from './state/shelf.ts';
import App from './view/App.svelte';

const target = document.getElementById('app');
if (target === null) throw new Error('the page has no place for the program');
const shelf = browserShelf(() => localStorage);
// Not awaited here: what the bench is read with is a chunk that itself imports this one, and would
// wait for it to finish for ever.
void openBench(shelf, location.hash).then((bench) => {
  mount(App, { target, props: { bench, shelf } });
});
