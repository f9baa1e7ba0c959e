/**
 * The whole border around its piece, as it will look, live while it is drawn.
 *
 * <p>May be used by the frame alone. Begin at {@link edgewright.desk.scene.SceneWindow}.
 */
package edgewright.desk.scene;
