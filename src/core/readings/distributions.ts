/** Standard uncertainty of a quantity that lies anywhere within ±`limit` (GUM 4.3.7: a/√3). */
export function withinLimits(limit: number): number {
  return limit / Math.sqrt(3);
}

/** Standard uncertainty from reading to the nearest `step` (GUM F.2.2.1: step/√12). */
export function fromResolution(step: number): number {
  return step / Math.sqrt(12);
}
