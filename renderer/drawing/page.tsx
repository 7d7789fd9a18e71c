import { memo } from 'react'
import type { Fill, Mark, PaperName, Page as PaperPage, Tone } from '../../core/papers/index.ts'
import { useNear } from './use-near.ts'
import { usePrinting } from './use-printing.ts'

/** The printed colours: a paper is white in a dark room too. */
const TONES: { readonly [tone in Tone]: string } = { ink: '#18232b', soft: '#4f5a62', hair: '#b9b4a8' }
const FILLS: { readonly [fill in Fill]: string } = {
  none: 'none',
  white: '#ffffff',
  wood: '#f1e6d2',
  tint: '#eceae4',
  ink: '#18232b',
}

/** One page as it will be printed, mark for mark; its width is that of its box. */
export const Page = memo(function Page({
  page,
  paper,
  logo,
}: {
  readonly page: PaperPage
  readonly paper: PaperName
  /** data URL; '' for none */
  readonly logo: string
}) {
  const [box, isNear] = useNear<HTMLDivElement>()
  // sixty pages hold ten thousand texts: only those in view are drawn, and all of them on paper
  const isDrawn = usePrinting() || isNear
  const { width, height, marks, title, number, of } = page
  return (
    <div
      ref={box}
      className={`page page-${paper}-${width > height ? 'across' : 'upright'}`}
      style={{ aspectRatio: `${width} / ${height}` }}
    >
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={`Page ${number} of ${of}: ${title}`}>
        <rect width={width} height={height} fill="#ffffff" />
        {isDrawn && marks.map((mark, index) => <Shape key={index} mark={mark} logo={logo} />)}
      </svg>
    </div>
  )
})

function Shape({ mark, logo }: { readonly mark: Mark; readonly logo: string }) {
  if (mark.kind === 'text') {
    return (
      <text
        x={mark.x}
        y={mark.y}
        fontSize={mark.size}
        fontWeight={mark.weight === 'bold' ? 600 : 400}
        textAnchor={mark.anchor}
        fill={TONES[mark.tone]}
        {...(mark.turned ? { transform: `rotate(-90 ${mark.x} ${mark.y})` } : {})}
      >
        {mark.text}
      </text>
    )
  }
  if (mark.kind === 'image') return <image x={mark.x} y={mark.y} width={mark.w} height={mark.h} href={logo} />
  const pen = {
    ...(mark.width > 0 ? { stroke: TONES[mark.tone], strokeWidth: mark.width } : {}),
    ...(mark.dash.length > 0 ? { strokeDasharray: mark.dash.join(' ') } : {}),
  }
  switch (mark.kind) {
    case 'line':
      return <line x1={mark.x1} y1={mark.y1} x2={mark.x2} y2={mark.y2} {...pen} />
    case 'circle':
      return <circle cx={mark.cx} cy={mark.cy} r={mark.r} fill={FILLS[mark.fill]} {...pen} />
    case 'path':
      return (
        <polygon
          points={mark.points.map(([x, y]) => `${x},${y}`).join(' ')}
          fill={FILLS[mark.fill]}
          {...pen}
        />
      )
  }
}
