import '../editor/editor.css';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Region } from '../../shared/body/places';
import { type Params } from '../../shared/router';
import { s } from '../../shared/words/shared';
import { useResource } from '../api/resource';
import { Button } from '../form/Button';
import { Link } from '../form/Link';
import { failureWords } from '../editor/failure';
import { coded, e } from '../editor/words';
import { OwnActions } from '../own/OwnActions';
import { Doing, Looking } from '../rights/Needs';
import { languageOf, type Entry, type Usual, type Variant } from './entry';
import { RungDrawing } from './RungDrawing';

/** One movement: its ladder, how it is done, what goes wrong, when to take care. */
export function ExercisePage({ params }: { params: Params }) {
  const { data: entry, failure, reload } = useResource<Entry>(`/exercises/${encodeURIComponent(params.code ?? '')}`);
  return (
    <main class="ed-page">
      <p class="ed-back"><Link to="/exercises">{e('backToLibrary')}</Link></p>
      {entry ? <Detail entry={entry} /> : (
        <>
          <h1>{e('exercise')}</h1>
          {failure ? <p role="alert">{failureWords(failure)} <Looking><Button small onClick={() => void reload()}>{e('tryAgain')}</Button></Looking></p> : <p role="status">{e('loading')}</p>}
        </>
      )}
    </main>
  );
}

function Detail({ entry }: { entry: Entry }) {
  return (
    <>
      <h1 lang={languageOf(entry)}>{entry.name}</h1>
      <p class="ed-why" lang={languageOf(entry)}>{entry.why}</p>
      {entry.own && <Doing><OwnActions entry={entry} /></Doing>}
      <dl class="ed-facts">
        <div><dt>{e('trains')}</dt><dd>{entry.trains.map((code) => coded('quality', code)).join(', ')}</dd></div>
        <div><dt>{e('loads')}</dt><dd>{entry.loads.map((code) => s(code as Region)).join(', ')}</dd></div>
        <div><dt>{e('loadedSides')}</dt><dd>{e(entry.sides === 'each' ? 'sidesEach' : 'sidesBoth')}</dd></div>
      </dl>
      <div class="ed-two">
        <section aria-labelledby="ladder">
          <h2 id="ladder">{e('ladder')}</h2>
          <Ladder entry={entry} />
        </section>
        <Teaching entry={entry} />
      </div>
    </>
  );
}

/** Hardest first; one drawing moves at a time. */
function Ladder({ entry }: { entry: Entry }) {
  const [playing, setPlaying] = useState<string | null>(null);
  const end = (i: number) => (i === 0 ? e('hardest') : i === entry.ladder.length - 1 ? e('easiest') : '');
  return (
    <ol class="ed-ladder">
      {[...entry.ladder].reverse().map((rung, i) => (
        <Rung key={rung.variant} entry={entry} rung={rung} end={end(i)}>
          {rung.drawn && <RungDrawing entry={entry} rung={rung} plays={playing === rung.variant} onPlay={(plays) => setPlaying(plays ? rung.variant : null)} />}
        </Rung>
      ))}
    </ol>
  );
}

const usual = (dose: Usual): string =>
  'reps' in dose ? e('usualReps', { low: dose.reps[0], high: dose.reps[1] }) : e('usualHold', { low: dose.hold_s[0], high: dose.hold_s[1] });

function Rung({ entry, rung, end, children }: { entry: Entry; rung: Variant; end: string; children: ComponentChildren }) {
  const kit = rung.kit.length ? e('needs', { kit: rung.kit.map((one) => coded('kit', one)).join(', ') }) : e('needsNothing');
  return (
    <li>
      <h3><span lang={languageOf(entry)}>{rung.name}</span> {end && <small>{end}</small>}</h3>
      {children}
      <ol lang={languageOf(entry)}>{rung.how.map((step) => <li key={step}>{step}</li>)}</ol>
      <p class="soft">{[usual(rung.dose), kit, e(`load_${rung.load}`)].join(' · ')}</p>
    </li>
  );
}

function Teaching({ entry }: { entry: Entry }) {
  return (
    <div>
      <section aria-labelledby="cues"><h2 id="cues">{e('cues')}</h2><ul class="ed-plain" lang={languageOf(entry)}>{entry.cues.map((cue) => <li key={cue}>{cue}</li>)}</ul></section>
      <section aria-labelledby="faults">
        <h2 id="faults">{e('faults')}</h2>
        <dl lang={languageOf(entry)} class="ed-faults">{entry.faults.map((fault) => <div key={fault.see}><dt>{fault.see}</dt><dd>{fault.instead}</dd></div>)}</dl>
      </section>
      <section aria-labelledby="cautions" class="urgent">
        <h2 id="cautions">{e('cautions')}</h2>
        <ul class="ed-plain" lang={languageOf(entry)}>{entry.cautions.map((caution) => <li key={caution}>{caution}</li>)}</ul>
        <p>{e('cautionsGeneral')}</p>
      </section>
      {!entry.ladder.some((rung) => rung.drawn) && <section aria-labelledby="drawing" class="ed-drawing"><h2 id="drawing">{e('drawing')}</h2><p class="soft">{e('drawingNone')}</p></section>}
    </div>
  );
}
