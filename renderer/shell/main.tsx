import '@mantine/core/styles/baseline.css'
import '@mantine/core/styles/default-css-variables.css'
import '@mantine/core/styles/global.css'
import '@mantine/core/styles/ScrollArea.css'
import '@mantine/core/styles/UnstyledButton.css'
import '@mantine/core/styles/Paper.css'
import '@mantine/core/styles/Popover.css'
import '@mantine/core/styles/CloseButton.css'
import '@mantine/core/styles/Overlay.css'
import '@mantine/core/styles/ModalBase.css'
import '@mantine/core/styles/Modal.css'
import '@mantine/core/styles/Group.css'
import '@mantine/core/styles/Input.css'
import '@mantine/core/styles/InlineInput.css'
import '@mantine/core/styles/Menu.css'
import '@mantine/spotlight/styles.css'
import './theme.css'
import './window.css'
import './touch.css'
import './print.css'
import { MantineProvider } from '@mantine/core'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { connect } from '../client/client.ts'
import { startDesigner } from '../client/designer.ts'
import { createSession } from '../state/session.ts'
import { App } from './app.tsx'
import { theme, variables } from './theme.ts'

const root = document.getElementById('root')
if (!root) throw new Error('the page has no root element')

const session = createSession(connect(), startDesigner)
window.addEventListener('pagehide', () => {
  session.saveNow()
  session.keepWindow()
})

createRoot(root).render(
  <StrictMode>
    <MantineProvider theme={theme} cssVariablesResolver={variables} defaultColorScheme="auto">
      <App session={session} />
    </MantineProvider>
  </StrictMode>,
)
