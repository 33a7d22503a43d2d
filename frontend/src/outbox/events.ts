/** Check-ins as events (decision 0001): never edited; a later one supersedes or withdraws an earlier one. */
import type { Aspect, Region, Side } from '../shared/body/places';

export interface Event {
  /** 1, 2, 3 ... on this phone, without gaps. */
  seq: number;
  /** UUIDv7; the event's identity everywhere. */
  id: string;
  kind: EventKind;
  /** RFC 3339 with the phone's own offset. */
  recorded_at: string;
  body: Record<string, unknown>;
}

interface About {
  /** Calendar day the entry is about, where it is not the day of recording. */
  day?: string;
  program_version?: number;
}
interface SetOf {
  planned_id: string;
  prescription: string;
  round: number;
}
interface OfMovement {
  /** The movement that was done, where it is not the prescribed one. */
  exercise?: string;
}
export type LeftOutReason = 'pain' | 'too_hard' | 'no_time' | 'no_kit' | 'other';
export type PainWhen = 'before' | 'during' | 'after' | 'next_morning';
export type Feel = 'aching' | 'sharp' | 'burning' | 'stiff' | 'pinching' | 'numb' | 'giving_way';
export type Intensity = 'light_to_moderate' | 'vigorous';
export type Symptom =
  | 'chest_pain' | 'fainting' | 'breathless' | 'palpitations' | 'one_sided_weakness' | 'worst_headache' | 'saddle_numbness'
  | 'bladder_or_bowel' | 'calf_swelling' | 'cannot_bear_weight' | 'heel_snap' | 'hot_joint_fever' | 'night_bone_pain' | 'fever'
  | 'dark_urine' | 'heat_confusion' | 'other';

/** The body of each kind; the server refuses unknown fields, so that a misspelt one cannot lose an answer. */
export interface Bodies {
  session_started: About & { planned_id: string };
  set_ticked: About & SetOf & OfMovement & { variant?: string; reps?: number; hold_s?: number; load_kg?: number };
  set_unticked: About & SetOf;
  set_left_out: About & SetOf & OfMovement & { reason: LeftOutReason };
  variant_swapped: About & OfMovement & { prescription: string; to_variant: string; planned_id?: string; from_variant?: string };
  session_finished: About & { minutes: number; effort: number; planned_id?: string };
  walk_logged: About & {
    distance_km: number; ascent_m: number; descent_m: number; minutes: number; pack_kg: number; effort?: number; planned_id?: string;
  };
  pain_reported: About & {
    rating: number; region: Region; side: Side; when: PainWhen; aspect?: Aspect; feels?: Feel[];
    planned_id?: string; prescription?: string; exercise?: string; variant?: string;
  };
  symptom_reported: About & { symptom: Symptom; note?: string; planned_id?: string };
  screening_answered: About & {
    regular_activity: boolean; known_disease: boolean; signs_or_symptoms: boolean; intensity: Intensity; details?: string[];
  };
  note_written: About & { text: string; planned_id?: string };
  entry_withdrawn: About & { event_id: string };
  message_read: About & { message_id: string };
}
export type EventKind = keyof Bodies;
