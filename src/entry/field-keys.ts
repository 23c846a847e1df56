/** Keys that tie a problem to the field it stands beside. One place, so that reader and screen agree. */
export const fieldKey = {
  size: (axis: string) => `size ${axis}`,
  name: () => 'name',
  tolerance: (requirement: string) => `tolerance ${requirement}`,
  faces: (requirement: string) => `faces ${requirement}`,
  noseHeight: (setup: string) => `nose height ${setup}`,
  indicatorHeight: (setup: string) => `indicator height ${setup}`,
  placing: (placing: string) => `reading ${placing}`,
  height: (height: string) => `height ${height}`,
  traverse: (placing: string, height: string) => `reading ${placing} at ${height}`,
  up: (place: string) => `up ${place}`,
  across: (place: string) => `across ${place}`,
  thickness: (place: string) => `thickness ${place}`,
  within: (setup: string) => `within ${setup}`,
  kit: (item: string) => `kit ${item}`,
  amount: () => 'amount',
} as const;
