import type { Plugin } from 'vite';

/**
 * What the built page may load: its own files only. `blob:` and `data:` pictures are for the PNG
 * export, which draws the section's SVG through an image. `frame-ancestors` can't stand in a meta
 * element, so it isn't here.
 */
export const POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Puts the policy into the built page; the dev server's injected styles would break under it. */
export function contentSecurityPolicy(): Plugin {
  return {
    name: 'toeline-content-security-policy',
    apply: 'build',
    transformIndexHtml: {
      // First in <head>, before anything the policy has to cover.
      order: 'post',
      handler: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
          injectTo: 'head-prepend',
        },
      ],
    },
  };
}
