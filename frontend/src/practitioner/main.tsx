import '../shared/css/index.css';
import './css/index.css';
import { render } from 'preact';
import { startRouter } from '../shared/router';
import { startTheme } from '../shared/theme';
import { startUnits } from '../shared/units';
import { startLanguage } from '../shared/words/mechanism';
import { startLive } from './api/live';
import { startSession } from './api/session';
import { App } from './shell/App';

startRouter('/desk');
startTheme();
startUnits();
await startLanguage();
startLive();
render(<App />, document.getElementById('app')!);
await startSession();
