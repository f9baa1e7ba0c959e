/**
 * How much work a border is, and how hard it is to keep count of.
 *
 * <p>May be used by the desk.
 */
package edgewright.assist.effort;
