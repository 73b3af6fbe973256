import { say } from '@legwork/trade'
import type { ReactNode } from 'react'
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components'
import { Button } from './button.tsx'
import './dialog.css'

export interface DialogProps {
  title: ReactNode
  isOpen: boolean
  onClose: () => void
  children: ReactNode
  /** The acts beside 'Close'. */
  actions?: ReactNode
  /** As wide as the page, for a picture. */
  wide?: boolean
}

/** The leaf itself, with all that keeps focus and keys inside it. */
export function DialogLeaf({ title, isOpen, onClose, children, actions, wide = false }: DialogProps) {
  return (
    <ModalOverlay className="dialog-ground" isOpen={isOpen} onOpenChange={(open) => !open && onClose()} isDismissable>
      <Modal className={wide ? 'dialog wide' : 'dialog'}>
        <AriaDialog>
          <Heading slot="title">{title}</Heading>
          <div className="inside">{children}</div>
          <div className="actions">
            <Button kind="second" onPress={onClose}>
              {say('act.close')}
            </Button>
            {actions}
          </div>
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  )
}
