import { Component, type ComponentChildren } from 'preact';
import { to } from './places.ts';

interface Props {
  readonly children: ComponentChildren;
  /** What this part of the page shows: "the question". */
  readonly what: string;
}

const sayFault = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));

function Apology({ fault, what }: { fault: unknown; what: string }) {
  const address = typeof window === 'undefined' ? '' : window.location.href;
  return (
    <div class="notice stop" role="alert">
      <p>
        <b>We made a mistake in {what}.</b> Your answers are safe: they are all in this link.
      </p>
      <p>
        <label class="field">
          <span class="field-name">Your link</span>
          <textarea readOnly rows={3} value={address} />
        </label>
      </p>
      <p>
        Please report what you did last, that link, and these words: “{sayFault(fault)}”.{' '}
        <a href={to('report-a-number/')} data-keep-path>
          How to report it
        </a>
      </p>
    </div>
  );
}

/** Keeps the rest of the page when a part of it fails, shows the link so that the work survives, and says what to report. */
export class Boundary extends Component<Props, { fault?: unknown }> {
  override state: { fault?: unknown } = {};

  static override getDerivedStateFromError(fault: unknown) {
    return { fault };
  }

  override render() {
    const { fault } = this.state;
    return fault === undefined ? this.props.children : <Apology fault={fault} what={this.props.what} />;
  }
}
