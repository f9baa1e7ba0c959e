/**
 * The page on which the desk begins while no chart lies on it: first steps, the charts worked on last, and the samples that
 * come with the program, each with a little picture of its fabric.
 *
 * <p>Used by the desk alone. Begin at {@link edgewright.desk.start.StartPage}.
 */
package edgewright.desk.start;
