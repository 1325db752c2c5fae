/**
 * The screens. Here live what is shown and what is kept in the browser until the book has it; rules and formulas
 * come from the rooms below and are never written here.
 */

import { mount } from 'svelte';
import App from './App.svelte';
import { startWorker } from './offline/start-worker.ts';
import { settings } from './state/settings.svelte.ts';
import './style/app.css';
import { loadWords } from './words/words.svelte.ts';

await loadWords(settings.language);
mount(App, { target: document.getElementById('screens')! });
startWorker();
