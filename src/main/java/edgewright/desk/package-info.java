/**
 * The window on which a border is drawn, seen, mended and published.
 *
 * <p>May be used by main alone, through {@link edgewright.desk.Desk}. Rooms: {@code work} and {@code fitting} are state
 * and answers and know no window; {@code parts} is the kit that panes and dialogs are made of; {@code jobs} is work
 * beside the event thread; {@code canvas}, {@code panes}, {@code dialogs}, {@code piece}, {@code yarn}, {@code guide},
 * {@code output} and {@code journal} are features, which never see each other: what one wants of another goes through the bench or is
 * handed in by the frame.
 */
package edgewright.desk;
