import type { ReactNode } from "react";
import { Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import "./files.css";

/** A dialog of the files: a heading, what is to be known, and buttons that say what will happen. */
export function FileDialog(props: {
  readonly heading: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly urgent?: boolean;
}) {
  return (
    <ModalOverlay
      className="dialog-ground"
      isOpen
      isDismissable={!props.urgent}
      onOpenChange={(open) => {
        if (!open) props.onClose();
      }}
    >
      <Modal className="dialog-frame">
        <Dialog className="dialog" role={props.urgent ? "alertdialog" : "dialog"}>
          <Heading slot="title" className="dialog-heading">
            {props.heading}
          </Heading>
          {props.children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
