/**
 * Written instructions: what a pattern says, how it is written down, and how it is read back.
 *
 * <p>Everything lies in rooms: {@code tree} holds the instructions as values, {@code terms} what the trade calls things,
 * {@code page} a pattern as text and its printers, {@code write} the way from a chart to words, {@code read} the way
 * from words back to the tree. The two ways never see each other, so that each can prove the other wrong.
 */
package edgewright.words;
