package secondbolt.lay.nofit;

/**
 * A shape in one orientation, as the mirror image of a reference shape.
 *
 * @param reference the number of the reference shape in its cache, from 0
 * @param reflection how the reference shape is reflected to be this
 * @param shape it, ready for the search
 */
public record ShapeImage(int reference, Reflection reflection, OrientedShape shape) {}
