/** Main: runs a command or opens the desk. Nobody uses it. */
package edgewright;
