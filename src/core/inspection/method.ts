/**
 * Version of the method that turns readings into results. It is kept with what finished readings said,
 * so that a later version of the app can tell where its own numbers differ, and why.
 *
 * Raise it by one with every change after which the same readings, part, kit and level can come to
 * another value, uncertainty, probability or verdict: another equation, weight, cause of doubt,
 * distribution, test or decision. A change of speed, wording or looks does not raise it, nor one that
 * moves results by rounding alone. Say in CHANGELOG.md what each version changed.
 */
export const METHOD = 1;
