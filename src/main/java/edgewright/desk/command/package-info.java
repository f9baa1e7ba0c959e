/**
 * The registry of what can be done at the desk: each command once, with its id, where its key counts, when it is possible and
 * what it does. Menus, keys, the help and the search of commands read it.
 *
 * <p>Knows no window and no text. Begin at {@link edgewright.desk.command.Commands}.
 */
package edgewright.desk.command;
