import type { Firm } from '../../../core/papers/index.ts'
import { ChooseFile } from '../../parts/choose-file.tsx'
import { useSession } from '../../state/session-context.ts'

const MOST = 300_000

/** The picture at the head of every page. The machine reads it to its end and refuses what is no whole picture. */
export function FirmLogo({ firm }: { readonly firm: Firm }) {
  const session = useSession()
  const take = async (file: File): Promise<void> => {
    if (file.size > MOST) {
      session.say(`${file.name} is too large for a logo: use at most ${MOST / 1000} kB.`)
      return
    }
    // its size is read from the picture itself
    const logo = { data: await dataUrl(file), width: 1, height: 1 }
    await session.saveFirm({ ...firm, logo })
  }
  return (
    <div className="firm-logo">
      {firm.logo !== null && <img src={firm.logo.data} alt="Your logo" />}
      <ChooseFile name="Logo" accept="image/png,image/jpeg" onChosen={(file) => void take(file)}>
        {firm.logo === null ? 'Add a logo' : 'Another logo'}
      </ChooseFile>
      {firm.logo !== null && (
        <button type="button" className="link" onClick={() => void session.saveFirm({ ...firm, logo: null })}>
          No logo
        </button>
      )}
      <p className="soft">PNG or JPEG, at most 300 kB.</p>
    </div>
  )
}

function dataUrl(file: File): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader()
    reader.onload = () => resolve(String(reader.result))
    reader.onerror = () => reject(reader.error)
    reader.readAsDataURL(file)
  })
}
