import { LinkCode } from './LinkCode.tsx';

/** On paper only, once: the link in full, and as a code. */
export function LinkOnPaper({ link }: { link: string }) {
  return (
    <div class="print-only">
      <div class="paper-link">
        <p class="link-text">
          <b>Opens this path again on any device:</b> {link}
        </p>
        <LinkCode link={link} />
      </div>
    </div>
  );
}
