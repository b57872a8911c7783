/**
 * A maker's file as text, its pieces with their places, and the mistakes told about them. Start at
 * {@link secondbolt.file.source.SourceFile} and {@link secondbolt.file.source.YamlReader}. This
 * room uses {@code disk} and is the only one that may use SnakeYAML. How YAML is scanned may be
 * changed freely; a change of a mistake's printed form would break editors that jump to it. Nothing
 * that gives a value a type belongs here: that is what {@code file} does.
 */
package secondbolt.file.source;
