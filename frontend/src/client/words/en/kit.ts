/** What a movement needs in the house. */
const kit = {
  kit_chair: 'chair', kit_step: 'step', kit_stairs: 'stairs', kit_wall: 'wall', kit_mat: 'mat', kit_band: 'band', kit_dumbbell: 'dumbbell',
  kit_pack: 'pack', kit_towel: 'towel', kit_ball: 'ball', kit_rail: 'rail', kit_table: 'table', kit_pillow: 'pillow',
} as const;
export default kit;
