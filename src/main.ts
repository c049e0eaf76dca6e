/** Where the page starts: styles, the bench as it was left, then the program into its place. */
import { mount } from 'svelte';
import './view/style/font.css';
import './view/style/tokens.css';
import './view/style/base.css';
import './view/style/drawing.css';
import './view/style/print.css';
import { isFirstVisit, openBench } from './state/kept-bench.svelte.ts';
import { browserShelf } from './state/shelf.ts';
import { browserTab } from './state/tab.ts';
import App from './view/App.svelte';
import { fetchRest } from './view/text.ts';

const target = document.getElementById('app');
if (target === null) throw new Error('the page has no place for the program');
const shelf = browserShelf(() => localStorage);
// The words that come with the page are the opening bench's, in the terms of a first visit; any other
// bench or person may need the rest of them.
const isFirst =
  isFirstVisit(shelf, browserTab, location.hash) && shelf.read('toeline.preferences') === null;
const words = isFirst ? null : fetchRest().catch(() => null);
// Not awaited here: what the bench is read with is a chunk that itself imports this one, and would
// wait for it to finish for ever.
void Promise.all([openBench(shelf, browserTab, location.hash), words]).then(([bench]) => {
  mount(App, { target, props: { bench, shelf } });
});
