import type { BrowserContext } from '@playwright/test';

/** Runs in the page, before its own scripts: a refusal by the content policy becomes a console error. */
function reportPolicyViolations() {
  document.addEventListener('securitypolicyviolation', (event) => {
    console.error(`content policy refused ${event.violatedDirective}: ${event.blockedURI} ${event.sample}`);
  });
}

function isForeign(url: string, origin: string): boolean {
  const { protocol, origin: asked } = new URL(url);
  return protocol.startsWith('http') && asked !== origin;
}

/**
 * Collects what a visitor must never meet: requests to another origin, console errors, uncaught errors and
 * content policy violations. Returns the list, which grows while the context lives.
 */
export async function watch(context: BrowserContext, origin: string): Promise<string[]> {
  const problems: string[] = [];
  await context.addInitScript(reportPolicyViolations);
  context.on('request', (request) => {
    if (isForeign(request.url(), origin)) problems.push(`request to another origin: ${request.url()}`);
  });
  context.on('console', (message) => {
    const { url } = message.location();
    if (message.type() === 'error') problems.push(`console error: ${message.text()} (${url})`);
  });
  context.on('weberror', (webError) => {
    problems.push(`uncaught error: ${webError.error().message}`);
  });
  return problems;
}
