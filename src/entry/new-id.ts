/** Makes ids; passed in, so that the same steps can be played again. */
export type NewId = () => string;
