/**
 * What a topic is, and the engine that works topics out. Start at {@link secondbolt.topic.Topic}; a
 * topic's step reads from a {@link secondbolt.topic.Bench}, and {@link secondbolt.topic.Engine}
 * uses what a step came to again while all it read is equal. This room uses {@code worksheet},
 * {@code figure}, {@code file}, {@code file.form} and {@code measure}. How results are kept may be
 * changed freely; a change of {@code Topic} changes every topic. Nothing that knows one topic, a
 * page or the disk belongs here.
 */
package secondbolt.topic;
