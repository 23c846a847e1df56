/**
 * The one Trusted Types policy of the page (see src/hosting/headers.ts): workers are started from the
 * app's own origin only, and no text becomes HTML or a script. Browsers without Trusted Types go by
 * the rest of the content security policy.
 */
window.trustedTypes?.createPolicy('default', {
  createScriptURL: (address) =>
    new URL(address, location.href).origin === location.origin ? address : null,
});
