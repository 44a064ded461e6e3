import type { ComponentChildren } from 'preact';
import { questionAt } from '../shared/places.ts';
import { go } from './navigate.ts';

interface Props {
  readonly href: string;
  readonly children: ComponentChildren;
  readonly class?: string;
  readonly current?: boolean;
}

const isPlain = (event: MouseEvent): boolean =>
  event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey;

/** A link to another question: an ordinary one, except that the page stays loaded. */
export function QuestionLink({ href, children, current = false, ...rest }: Props) {
  const follow = (event: MouseEvent) => {
    if (!isPlain(event) || !questionAt(new URL(href, window.location.href).pathname)) return;
    event.preventDefault();
    go(href);
  };
  return (
    <a
      href={href}
      data-keep-path
      class={rest.class}
      aria-current={current ? 'true' : undefined}
      onClick={follow}
    >
      {children}
    </a>
  );
}
