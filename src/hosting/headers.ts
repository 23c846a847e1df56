import type { Plugin } from 'vite';

/**
 * What the page may load and do, as a content security policy (CSP level 3): its own files, and
 * nothing else from anywhere. No inline script, no eval, and no text is ever taken for HTML or for
 * a script's address (Trusted Types), but for the one policy in src/own-scripts.ts.
 */
const POLICY = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' data: blob:",
  'font-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'require-trusted-types-for': "'script'",
  'trusted-types': 'default',
};

const written = (policy: Readonly<Record<string, string>>) =>
  Object.entries(policy)
    .map(([directive, value]) => `${directive} ${value}`)
    .join('; ');

/** The policy as far as the page itself can state it, where the host sends no headers. */
export const PAGE_POLICY = written(POLICY);

/** What every answer of the host is to carry. */
export const SECURITY_HEADERS = {
  // Who may show the app in a frame is heard in a header only.
  'Content-Security-Policy': written({ ...POLICY, 'frame-ancestors': "'none'" }),
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=(), payment=(), usb=()',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/** Puts the policy into the built page, ahead of all that it rules. */
export function pagePolicy(): Plugin {
  const attrs = { 'http-equiv': 'Content-Security-Policy', content: PAGE_POLICY };
  return {
    name: 'page-policy',
    apply: 'build',
    transformIndexHtml: () => [{ tag: 'meta', attrs, injectTo: 'head-prepend' }],
  };
}
