/**
 * The window about yarn, and the forms in which yarns are changed and measured.
 *
 * <p>May be used by the frame alone. Begin at {@link edgewright.desk.yarn.YarnWindow}.
 */
package edgewright.desk.yarn;
