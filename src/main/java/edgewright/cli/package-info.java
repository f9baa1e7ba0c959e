/**
 * The commands, their answers on the terminal and their exit statuses.
 *
 * <p>May be used by main alone. With main it alone writes to the terminal and ends the program.
 */
package edgewright.cli;
