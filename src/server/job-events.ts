import type { Jobs } from './jobs.ts';

/** Server-sent events (HTML Standard, 9.2): the job as it stands, then at every change, until it has ended. */
export function jobEvents(jobs: Jobs, jobId: string): Response {
  // Throws before anything is sent when the job is not known.
  jobs.find(jobId);
  let stop = () => {};
  const events = new ReadableStream<Uint8Array>({
    start: (controller) => {
      stop = jobs.watch(jobId, (job) => {
        controller.enqueue(encoder.encode(`data: ${JSON.stringify(job)}\n\n`));
        if (job.state === 'running') return;
        stop();
        controller.close();
      });
      if (jobs.find(jobId).state !== 'running') stop();
    },
    cancel: () => stop(),
  });
  return new Response(events, { headers: { 'content-type': 'text/event-stream' } });
}

const encoder = new TextEncoder();
