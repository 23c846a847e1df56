/** The version in package.json, put in by the build. */
declare const __APP_VERSION__: string;

interface Window {
  /** W3C Trusted Types, as far as it is used; not in every browser. */
  readonly trustedTypes?: {
    createPolicy(
      name: string,
      rules: { readonly createScriptURL: (address: string) => string | null },
    ): void;
  };
}
