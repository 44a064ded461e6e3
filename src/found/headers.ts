/** What a server says with the files of the site, ready for those servers that read it from a file. */

/** Parts of the device that no page asks for. */
const NOT_ASKED = ['camera', 'display-capture', 'geolocation', 'microphone', 'midi', 'payment', 'usb'];

/** Name and value of each header that goes with every file. */
export type Headers = readonly (readonly [name: string, value: string])[];

/** The policy of the pages goes with all; what a page cannot say for itself is added: nobody may put it in a frame. */
export const headersOf = (policy: string): Headers => [
  ['Content-Security-Policy', `${policy}; frame-ancestors 'none'`],
  ['X-Frame-Options', 'DENY'],
  ['X-Content-Type-Options', 'nosniff'],
  ['Referrer-Policy', 'no-referrer'],
  ['Cross-Origin-Opener-Policy', 'same-origin'],
  ['Permissions-Policy', NOT_ASKED.map((name) => `${name}=()`).join(', ')],
];

/** Files below this folder have a hash of what they hold in their name: they never change. */
const HASHED = '_astro/';
const FOR_EVER = 'public, max-age=31536000, immutable';
/** Kept, but asked about each time. */
const ASKED_ABOUT = 'no-cache';

/** Plain lines, as several hosts of static sites read them from a file `_headers`; the later block wins. */
export const plainHeaders = (headers: Headers, base: string): string =>
  [
    `${base}*`,
    ...headers.map(([name, value]) => `  ${name}: ${value}`),
    `  Cache-Control: ${ASKED_ABOUT}`,
    `${base}${HASHED}*`,
    '  ! Cache-Control',
    `  Cache-Control: ${FOR_EVER}`,
    '',
  ].join('\n');

/** For Apache 2.4 with mod_headers, read from the folder itself. */
export const apacheHeaders = (headers: Headers, base: string): string =>
  [
    'Options -Indexes -MultiViews',
    'DirectoryIndex index.html',
    `ErrorDocument 404 ${base}404.html`,
    '<IfModule mod_headers.c>',
    ...headers.map(([name, value]) => `  Header always set ${name} "${value}"`),
    `  <If "%{REQUEST_URI} =~ m#^${base}${HASHED}#">`,
    `    Header set Cache-Control "${FOR_EVER}"`,
    '  </If>',
    '  <Else>',
    `    Header set Cache-Control "${ASKED_ABOUT}"`,
    '  </Else>',
    '</IfModule>',
    '',
  ].join('\n');

/** For nginx: a file of its conf.d. The site stands below `root` in the folder of its address. */
export const nginxServer = (headers: Headers, base: string): string =>
  [
    'map $uri $halfnut_cache {',
    `  "~^${base}${HASHED}" "${FOR_EVER}";`,
    `  default "${ASKED_ABOUT}";`,
    '}',
    'server {',
    '  listen 80;',
    '  server_name example.org;',
    '  root /srv/www;',
    '  index index.html;',
    `  error_page 404 ${base}404.html;`,
    '  gzip on;',
    '  gzip_types text/css text/javascript application/javascript application/json image/svg+xml;',
    ...headers.map(([name, value]) => `  add_header ${name} "${value}" always;`),
    '  add_header Cache-Control $halfnut_cache always;',
    '}',
    '',
  ].join('\n');

/** For Caddy 2, as a whole Caddyfile. The site stands below `root` in the folder of its address. */
export const caddySite = (headers: Headers, base: string): string =>
  [
    'example.org {',
    '  root * /srv/www',
    '  encode zstd gzip',
    '  header {',
    ...headers.map(([name, value]) => `    ${name} "${value}"`),
    '  }',
    `  @hashed path ${base}${HASHED}*`,
    `  @asked not path ${base}${HASHED}*`,
    `  header @hashed Cache-Control "${FOR_EVER}"`,
    `  header @asked Cache-Control "${ASKED_ABOUT}"`,
    '  file_server',
    '  handle_errors {',
    `    rewrite * ${base}404.html`,
    '    file_server',
    '  }',
    '}',
    '',
  ].join('\n');
