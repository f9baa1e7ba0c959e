/**
 * A text of JSON, read value by value and written in pieces. Knows nothing of charts.
 *
 * <p>May be used by the codecs. Begin at {@link edgewright.file.json.JsonWalk}.
 */
package edgewright.file.json;
