import { useRef, useState } from 'preact/hooks';
import { SendSheet, type Sent } from './SendSheet.tsx';

/** The button that opens the sheet for sending a path or a comparison. Escape or its button shuts it; the focus goes back. */
export function Send(sent: Sent) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [open, setOpen] = useState(false);
  const show = () => {
    setOpen(true);
    dialog.current?.showModal();
  };
  const shut = () => dialog.current?.close();
  const title = sent.others?.length ? 'Send this comparison' : 'Send this path';
  return (
    <>
      <button type="button" class="button small no-print" aria-haspopup="dialog" onClick={show}>
        {title}
      </button>
      <dialog
        ref={dialog}
        class="why-sheet send-sheet no-print"
        aria-labelledby="send-title"
        onClose={() => setOpen(false)}
      >
        <div class="why-head">
          <h2 id="send-title">{title}</h2>
          <button type="button" class="button small" onClick={shut}>
            Close
          </button>
        </div>
        {open ? <SendSheet {...sent} shut={shut} /> : null}
      </dialog>
    </>
  );
}
