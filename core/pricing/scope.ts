import type { Job, ScopeTopic } from '../job/index.ts'
import type { Good, Takeoff } from '../takeoff/index.ts'

/** The topic under which a good is counted, where a job may leave it out. */
export function topicOfGood(good: Pick<Good, 'sku' | 'group'>): ScopeTopic | null {
  if (good.group === 'fasteners') return 'fasteners'
  return good.sku.startsWith('ledger-flashing') || good.sku.startsWith('ledger-membrane') ? 'flashing' : null
}

/** The topic under which a task's hours are counted, where a job may leave it out. */
export function topicOfTask(rateId: string): ScopeTopic | null {
  return rateId === 'clean-final' ? 'clean-up' : null
}

/** The goods and tasks without those whose topic the job does not include. */
export function leaveOut(job: Job, takeoff: Takeoff): Pick<Takeoff, 'goods' | 'tasks'> {
  const wanted = (topic: ScopeTopic | null) => topic === null || job.scope[topic].included
  return {
    goods: takeoff.goods.filter((good) => wanted(topicOfGood(good))),
    tasks: takeoff.tasks.filter((task) => wanted(topicOfTask(task.rateId))),
  }
}
