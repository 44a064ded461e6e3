// A browser led by WebDriver BiDi (W3C), as far as one journey needs it: pages, scripts, clicks and what goes wrong.

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly error?: string;
  readonly message?: string;
  readonly result?: Record<string, unknown>;
  readonly params?: Record<string, unknown>;
}

/** Where a call takes longer than this, the browser is taken for dead. Milliseconds. */
const PATIENCE = 60_000;

/**
 * Runs in each page before its own scripts: what the content policy refuses, what is thrown and what nobody caught becomes a
 * console error. The browser's own list of errors has more in it, of which the page itself hears nothing.
 */
const TELL = `() => {
  const tell = (name, say) => document.defaultView.addEventListener(name, (event) => console.error(say(event)));
  tell('securitypolicyviolation', (e) => 'content policy refused ' + e.violatedDirective + ': ' + e.blockedURI);
  tell('error', (e) => 'thrown: ' + e.message + ' ' + (e.filename ?? ''));
  tell('unhandledrejection', (e) => 'nobody caught: ' + e.reason);
}`;

export interface Tab {
  goto(url: string): Promise<void>;
  reload(): Promise<void>;
  /** The value of a JavaScript expression in the page: text, number or true and false. */
  value<Value extends string | number | boolean>(expression: string): Promise<Value>;
  /** Waits until the expression is true in the page. */
  until(expression: string): Promise<void>;
  /** Scrolls to the first element of the selector and clicks into its middle with a real pointer, once it stands still. */
  click(selector: string): Promise<void>;
  /** Requests to other places, errors and refusals of the policy so far. */
  readonly problems: readonly string[];
  close(): Promise<void>;
}

/** Opens the line to a browser that listens there. */
async function lineTo(address: string, hear: (message: Message) => void) {
  const socket = new WebSocket(address);
  const waiting = new Map<number, { resolve: (result: never) => void; reject: (fault: Error) => void }>();
  socket.addEventListener('message', ({ data }) => {
    const message = JSON.parse(String(data)) as Message;
    const asked = waiting.get(message.id ?? -1);
    if (!asked) return hear(message);
    waiting.delete(message.id!);
    if (message.error) asked.reject(new Error(`${message.error}: ${message.message}`));
    else asked.resolve(message.result as never);
  });
  await new Promise((resolve, reject) => {
    socket.addEventListener('open', resolve);
    socket.addEventListener('error', () => reject(new Error('the browser does not answer')));
  });
  let number = 0;
  return function call<Result>(method: string, params: object): Promise<Result> {
    number += 1;
    const id = number;
    const timer = setTimeout(() => {
      waiting.get(id)?.reject(new Error(`${method}: no answer`));
      waiting.delete(id);
    }, PATIENCE);
    timer.unref();
    return new Promise<Result>((resolve, reject) => {
      waiting.set(id, { resolve, reject });
      socket.send(JSON.stringify({ id, method, params }));
    }).finally(() => clearTimeout(timer));
  };
}

interface Entry {
  readonly level?: string;
  readonly type?: string;
  readonly text?: string;
  readonly request?: { readonly url: string };
}

/** What a message tells of a problem, where it tells of one. */
function problemIn({ method, params = {} }: Message, origin: string): string | undefined {
  const { level, type, text, request } = params as Entry;
  if (method === 'log.entryAdded' && type === 'console' && level === 'error') return text;
  const url = method === 'network.beforeRequestSent' ? (request?.url ?? '') : '';
  return url.startsWith('http') && new URL(url).origin !== origin
    ? `request to another origin: ${url}`
    : undefined;
}

interface Evaluated {
  readonly result?: { readonly value?: unknown };
  readonly exceptionDetails?: { readonly text: string };
}

/** Takes the first tab of the browser that listens at `address`; `origin` is the site's own. */
export async function firstTab(address: string, origin: string): Promise<Tab> {
  const problems: string[] = [];
  const call = await lineTo(`${address}/session`, (message) => {
    const problem = problemIn(message, origin);
    if (problem) problems.push(problem);
  });
  await call('session.new', { capabilities: {} });
  await call('session.subscribe', { events: ['log.entryAdded', 'network.beforeRequestSent'] });
  await call('script.addPreloadScript', { functionDeclaration: TELL });
  const { contexts } = await call<{ contexts: { context: string }[] }>('browsingContext.getTree', {});
  const { context } = contexts[0]!;

  const value = async <Value>(expression: string): Promise<Value> => {
    const asked = { expression, target: { context }, awaitPromise: true };
    const { result, exceptionDetails } = await call<Evaluated>('script.evaluate', asked);
    if (exceptionDetails) throw new Error(`${expression}: ${exceptionDetails.text}`);
    return result?.value as Value;
  };

  const until = async (expression: string): Promise<void> => {
    const end = Date.now() + PATIENCE;
    // While a page is being left there is nothing to ask.
    while (!(await value<boolean>(`Boolean(${expression})`).catch(() => false))) {
      if (Date.now() > end) throw new Error(`never came true: ${expression}`);
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  };

  /** Once what is drawn late no longer moves it, as a hand would wait. */
  const stands = (element: string): Promise<void> =>
    until(`((top) => top === window.stoodAt || (window.stoodAt = top, false))(
      String([${element}.getBoundingClientRect().top, scrollY, document.body.scrollHeight]))`);

  const click = async (selector: string): Promise<void> => {
    const found = `document.querySelector(${JSON.stringify(selector)})`;
    await until(`${found} && !document.querySelector('astro-island[ssr]')`);
    await value<boolean>(`(${found}.scrollIntoView({ block: 'center' }), delete window.stoodAt)`);
    await stands(found);
    const where = await value<string>(
      `(() => { const r = ${found}.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2].map(Math.round).join() })()`,
    );
    const [x, y] = where.split(',').map(Number);
    const pointer = [
      { type: 'pointerMove', x, y, origin: 'viewport' },
      { type: 'pointerDown', button: 0 },
      { type: 'pointerUp', button: 0 },
    ];
    await call('input.performActions', {
      context,
      actions: [{ type: 'pointer', id: 'hand', actions: pointer }],
    });
  };

  return {
    goto: (url) => call('browsingContext.navigate', { context, url, wait: 'complete' }),
    reload: () => call('browsingContext.reload', { context, wait: 'complete' }),
    value,
    until,
    click,
    problems,
    close: () => call('browser.close', {}),
  };
}
