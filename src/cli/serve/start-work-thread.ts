/** Where a working thread begins: what it loads is compiled already. */

import { flushCompileCache } from 'node:module';
import { keepCompiled } from '../compile-cache.ts';

keepCompiled();
await import('./work-thread.ts');
// A thread is ended, and never comes to keep anything at its end.
flushCompileCache();
