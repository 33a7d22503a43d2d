import '../shared/css/index.css';
import { render } from 'preact';
import { start } from '../outbox';
import { Pages, startRouter } from '../shared/router';
import { startTheme } from '../shared/theme';
import { startUnits } from '../shared/units';
import { startLanguage } from '../shared/words/mechanism';
import { registerWorker } from '../sw/register';
import { otherwise, routes } from './screens';

startTheme();
startUnits();
startRouter('/app');
// What is on the phone is read before the first drawing: the phone never shows "loading" for what it already has.
await Promise.all([startLanguage(), start()]);
render(<Pages routes={routes} otherwise={otherwise} />, document.getElementById('app')!);
void registerWorker();
