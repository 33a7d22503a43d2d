import type { Translation } from '../../../shared/words/mechanism';
import type en from '../en/kit';

const kit: Translation<typeof en> = {
  kit_chair: 'Stuhl', kit_step: 'Stufe', kit_stairs: 'Treppe', kit_wall: 'Wand', kit_mat: 'Matte', kit_band: 'Band', kit_dumbbell: 'Hantel',
  kit_pack: 'Rucksack', kit_towel: 'Handtuch', kit_ball: 'Ball', kit_rail: 'Geländer', kit_table: 'Tisch', kit_pillow: 'Kissen',
};
export default kit;
