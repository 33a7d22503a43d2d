/**
 * What the server answers, taken from its own description, so that the type check says when the two drift apart. `Narrow` says more
 * where the description says only "text": a word that is not among those is refused by the compiler as soon as the server names its own.
 */
import type { Aspect, Region, Side } from '../../shared/body/places';
import type { Prescription } from '../../shared/program';
import type { components } from '../../generated/api';

export type Schemas = components['schemas'];
/** `T` with some fields said more narrowly; each must still fit the field it stands for. */
export type Narrow<T, N extends { [K in keyof N]: K extends keyof T ? T[K] : never }> = Omit<T, keyof N> & N;
/** `T` with some fields read in a shape of these apps; what the server answers must fit that shape. */
export type Read<T, N extends { [K in keyof N]: K extends keyof T ? (T[K] extends N[K] ? N[K] : never) : never }> = Omit<T, keyof N> & N;

/** RFC 3339. */
export type Time = string;
export interface Items<T> { items: T[] }

export type Me = Schemas['Me'];
export type Kit = Schemas['Kit'];
export const KIT = ['chair', 'step', 'stairs', 'wall', 'mat', 'band', 'dumbbell', 'pack', 'towel', 'ball', 'rail', 'table', 'pillow'] as const satisfies readonly Kit[];

export type Client = Schemas['ClientOut'];
/** What a practitioner may say of a client. */
export type ClientFields = Omit<Client, 'id' | 'created_at' | 'archived_at' | 'version'>;

export type Invitation = Schemas['InvitationOut'];
export type Device = Schemas['DeviceOut'];
export type WaitingPairing = Schemas['WaitingPairing'];

/** Done over prescribed in a span; `low` and `high` are shares from 0 to 1, equal when all is heard, null when nothing was prescribed. */
export type Ratio = Schemas['RatioOut'];
export type Ratios = Schemas['SpanAdherence'];
export type RidgeData = Schemas['Ridge'];
export type Goal = Schemas['GoalOut'];

export type Status = Schemas['Status'];
export type PlannedShort = Schemas['DayMark'];
export type SessionItem = Schemas['SessionOut'];

export type Rule = 'red_flag_symptom' | 'pain_too_high' | 'pain_next_morning' | 'pain_rising' | 'pain_after' | 'pain_moved' | 'usual_pain_up' | 'effort_rising';
export type Action = Schemas['Action'];
export type RuleKind = Schemas['Kind'];
export type FlagShort = Schemas['FlagShort'];
export type Decision = Schemas['DecisionOut'];
export type Flag = Narrow<Schemas['Flag'], { rule: Rule; status: Schemas['FlagStatus'] }>;
export type Decided = Narrow<Schemas['Decided'], { flag: Flag }>;

export type Group = Schemas['Group'];
type WorstPain = Narrow<Schemas['WorstPain'], { region: Region; side: Side }>;
export type CaseloadRow = Narrow<Schemas['Row'], { pain: WorstPain | null }>;
export type Caseload = Narrow<Schemas['Caseload'], { items: CaseloadRow[] }>;

export type PainWhen = 'before' | 'during' | 'after' | 'next_morning';
export type PainReport = Narrow<Schemas['PainOut'], { region: Region; side: Side; aspect: Aspect | null; when: PainWhen }>;
export type Message = Schemas['MessageOut'];
type OverviewClient = Narrow<Schemas['OverviewClient'], { kit: Kit[]; thresholds: Client['thresholds'] }>;
type PainRegion = Narrow<Schemas['PainRegion'], { region: Region; side: Side }>;
/** `heard_until`: when the phone was last heard, with the client's own offset. */
export type Overview = Narrow<Schemas['Overview'], { client: OverviewClient; pain: PainReport[]; pain_regions: PainRegion[]; flags: Flag[] }>;

/** A published version as lists tell it, without its content. */
export type ProgramVersion = Schemas['ProgramSummary'];
export type TimelineItem = Schemas['TimelineItem'];
export type Timeline = Schemas['Timeline'];
type Refusal = { detail?: string; title?: string; errors?: { pointer: string; detail: string }[] };
export type RefusedEvent = Narrow<Schemas['RefusedEventOut'], { problem: Refusal }>;
export type Retry = Narrow<Schemas['RetryOut'], { problem: Refusal | null }>;

/** What the last sessions suggest, with the two doses in the shape that both apps read. */
type Doses = { now: Prescription; then: Prescription | null };
export type Suggestion = Read<Schemas['SuggestionOut'], Doses>;
export type Declined = Read<Schemas['DeclinedOut'], Doses>;
export type Suggestions = Read<Schemas['Suggestions'], { items: Suggestion[]; declined: Declined[] }>;
export type Choice = Schemas['Choice'];
export type Progressed = Schemas['Progressed'];
export type Work = Schemas['WorkOut'];
export type Installation = Schemas['InstallationOut'];
export type Sources = Schemas['Sources'];

export type ScreeningQuestions = Schemas['QuestionList'];
export type ScreeningAnswers = Schemas['ScreeningAnswers'];
export type Screening = Schemas['ScreeningOut'];
export type ScreeningList = Schemas['ScreeningList'];

export type Test = Schemas['TestOut'];
export type TestResult = Schemas['ResultOut'];
export type TestItem = Schemas['TestItem'];
export type ClientTests = Schemas['ClientTests'];
export type Load = Schemas['LoadOut'];

export type Readiness = Schemas['ReadinessOut'];
export type ReadinessShown = Schemas['ReadinessShown'];
export type ReadinessItem = Schemas['ReadinessItem'];
export type ReadinessNote = Schemas['SignedNote'];
export type Verdict = Schemas['Verdict'];
export type Trip = Schemas['TripOut'];
export type TripBody = Schemas['TripBody'];
export type TripLeg = Schemas['LegOut'];
export type LegBody = Schemas['LegBody'];
export type Ground = Schemas['Ground'];
export type FromFile = Schemas['FromFile'];
export type Slopes = Schemas['SlopesOut'];
export type RouteReading = Schemas['ReadingOut'];
export type Demand = Schemas['DemandOut'];
export type LegDemand = Schemas['LegDemandOut'];
