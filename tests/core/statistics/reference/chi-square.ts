/**
 * Chi-square with these parts above it, by degrees of freedom. Printed tables found on the web: to
 * 5 decimals a table of the Namibia University of Science and Technology, checked against two
 * others; 100 degrees, to 3 decimals, NIST/SEMATECH e-Handbook 1.3.6.7.4, lower critical values.
 */
export const CHI_SQUARE_TABLE = [
  {
    degrees: 1,
    decimals: 5,
    above: [0.1, 0.05, 0.025, 0.01, 0.005],
    printed: ['2.70554', '3.84146', '5.02389', '6.63490', '7.87944'],
  },
  {
    degrees: 2,
    decimals: 5,
    above: [0.95, 0.1, 0.05, 0.025, 0.01],
    printed: ['0.10259', '4.60517', '5.99146', '7.37776', '9.21034'],
  },
  {
    degrees: 4,
    decimals: 5,
    above: [0.99, 0.75, 0.25, 0.05, 0.01],
    printed: ['0.29711', '1.92256', '5.38527', '9.48773', '13.27670'],
  },
  {
    degrees: 8,
    decimals: 5,
    above: [0.99, 0.5, 0.1, 0.025, 0.01],
    printed: ['1.64650', '7.34412', '13.36157', '17.53455', '20.09024'],
  },
  {
    degrees: 100,
    decimals: 3,
    above: [0.9, 0.95, 0.975, 0.99, 0.999],
    printed: ['82.358', '77.929', '74.222', '70.065', '61.918'],
  },
] as const;
