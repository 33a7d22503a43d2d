import '../shared/css/index.css';
import './css/client.css';
import { render } from 'preact';
import { start } from '../outbox';
import { startRouter } from '../shared/router';
import { startTheme } from '../shared/theme';
import { startUnits } from '../shared/units';
import { startLanguage } from '../shared/words/mechanism';
import { registerWorker } from '../sw/register';
import { App } from './App';
import { watchTextSize } from './largeText';
import { watchTime } from './phone';
import { watchInstall } from './screens/pair/install';
import { loadPending, takeLinkCode } from './screens/pair/pending';
import { loadShared } from './walkfile/shared';
import { loadSince } from './season/since';
import { startRestKeeping } from './session/rest';

takeLinkCode();
// The app may be open already when the link is tapped.
addEventListener('hashchange', takeLinkCode);
startRouter('/app');
startTheme();
startUnits();
watchTime();
watchTextSize();
watchInstall();
// What is on the phone is read before the first drawing: it takes milliseconds, and nobody sees an empty page first.
await Promise.all([startLanguage(), start()]);
await Promise.all([startRestKeeping(), loadPending(), loadSince(), loadShared()]);
render(<App />, document.getElementById('app')!);
void registerWorker();
void import('./session/drawings').then(({ watchDrawings }) => watchDrawings(), () => undefined);
