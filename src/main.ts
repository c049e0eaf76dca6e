/** Where the page starts: styles, then the program into its place. */
import { mount } from 'svelte';
import './view/style/font.css';
import './view/style/tokens.css';
import './view/style/base.css';
import './view/style/print.css';
import App from './view/App.svelte';

const place = document.getElementById('app');
if (place === null) throw new Error('the page has no place for the program');
mount(App, { target: place });
