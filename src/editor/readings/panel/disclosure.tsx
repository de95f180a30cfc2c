import { type ReactNode, useId, useState } from "react";

/** A heading that opens what stands under it. What is closed is not drawn, and costs nothing. */
export function Disclosure(props: {
  readonly name: string;
  readonly open?: boolean;
  readonly onOpen?: (open: boolean) => void;
  readonly children: ReactNode;
}) {
  const [own, setOwn] = useState(false);
  const open = props.open ?? own;
  const id = useId();
  return (
    <section className="disclosure">
      <h3>
        <button
          type="button"
          className="disclosure-button"
          aria-expanded={open}
          aria-controls={id}
          onClick={() => {
            setOwn(!open);
            props.onOpen?.(!open);
          }}
        >
          <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
            <path
              d={open ? "M2 4l4 4 4-4" : "M4 2l4 4-4 4"}
              fill="none"
              stroke="currentColor"
              strokeWidth="1.5"
            />
          </svg>
          {props.name}
        </button>
      </h3>
      <div id={id} hidden={!open} className="disclosure-body">
        {open && props.children}
      </div>
    </section>
  );
}
