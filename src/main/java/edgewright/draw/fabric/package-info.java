/**
 * How yarn lies in the stitches of a border: the shapes of worked fabric, seen from the right side.
 *
 * <p>May be used by draw.picture. Begin at {@link edgewright.draw.fabric.FabricStamps}. It knows stitches and colours, but no
 * chart: which stitch stands where is said to it.
 */
package edgewright.draw.fabric;
