import { useStore } from '@nanostores/preact';
import { Component, type ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { NOT_FETCHED } from '../ask/fetched.ts';
import { $fault, $path, $report } from '../stores.ts';
import { to } from './places.ts';

interface Props {
  readonly children: ComponentChildren;
  /** What this part of the page shows: "the question". */
  readonly what: string;
}

const sayFault = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));

function YourLink() {
  const address = typeof window === 'undefined' ? '' : window.location.href;
  return (
    <p>
      <label class="field">
        <span class="field-name">Your link</span>
        <textarea readOnly rows={3} value={address} />
      </label>
    </p>
  );
}

/** A connection that is gone is no mistake of ours, and what helps is another. */
function NotFetched({ what }: { what: string }) {
  return (
    <div class="notice look" role="alert">
      <p>
        <b>{NOT_FETCHED}</b> Without it we cannot work out {what}. Your answers are safe: they are all in this
        link. Look whether you are connected, then load the page again.
      </p>
      <YourLink />
      <p class="notice-actions">
        <button type="button" class="button small" onClick={() => window.location.reload()}>
          Load the page again
        </button>
      </p>
    </div>
  );
}

function Apology({ fault, what }: { fault: unknown; what: string }) {
  if (sayFault(fault) === NOT_FETCHED) return <NotFetched what={what} />;
  return (
    <div class="notice stop" role="alert">
      <p>
        <b>We made a mistake in {what}.</b> Your answers are safe: they are all in this link.
      </p>
      <YourLink />
      <p>
        Please report what you did last, that link, and these words: “{sayFault(fault)}”.{' '}
        <a href={to('report-a-number/')} data-keep-path>
          How to report it
        </a>
      </p>
    </div>
  );
}

interface CatcherProps extends Props {
  /** What stood on the sheet when this was drawn; with something new the part is tried again. */
  readonly moment: unknown;
}

interface CatcherState {
  readonly fault?: unknown;
  readonly moment?: unknown;
}

class Catcher extends Component<CatcherProps, CatcherState> {
  override state: CatcherState = {};

  static override getDerivedStateFromProps({ moment }: CatcherProps, state: CatcherState) {
    return state.moment === moment ? null : { moment, fault: undefined };
  }

  static override getDerivedStateFromError(fault: unknown) {
    return { fault };
  }

  override render() {
    const { fault } = this.state;
    return fault === undefined ? this.props.children : <Apology fault={fault} what={this.props.what} />;
  }
}

/**
 * Keeps the rest of the page when a part of it fails, shows the link so that the work survives, and says what to report.
 * The next answer gets a fresh try.
 */
export function Boundary({ what, children }: Props) {
  const path = useStore($path);
  const report = useStore($report);
  const moment = useMemo(() => ({ path, report }), [path, report]);
  return (
    <Catcher what={what} moment={moment}>
      {children}
    </Catcher>
  );
}

/** A part that lives on the figures: where working them out failed it says so in its place. */
export function WithFigures({ what, children }: Props) {
  const fault = useStore($fault);
  return fault === undefined ? (
    <Boundary what={what}>{children}</Boundary>
  ) : (
    <Apology fault={fault} what={what} />
  );
}
