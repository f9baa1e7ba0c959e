/**
 * The round guide, and what the designer says of how the border is made.
 *
 * <p>May be used by the frame alone. Begin at {@link edgewright.desk.guide.GuideCommands}.
 */
package edgewright.desk.guide;
