/**
 * Work that takes a while, beside the event thread; files opened and saved; questions asked on the way.
 *
 * <p>May be used by the frame, by the output and by the status line. Begin at {@link edgewright.desk.jobs.Jobs}.
 */
package edgewright.desk.jobs;
