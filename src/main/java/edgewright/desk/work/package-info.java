/**
 * The chart in work, what belongs to working on it, and how it is looked at. No window, by law.
 *
 * <p>May be used by every room of the desk. Begin at {@link edgewright.desk.work.Workbench}.
 */
package edgewright.desk.work;
