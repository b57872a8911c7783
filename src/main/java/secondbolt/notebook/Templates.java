package secondbolt.notebook;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.core.TemplateHTMLOutputModel;
import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapperBuilder;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Fills the templates. They see the components of public records, maps, lists and text, and two
 * functions: {@code markdown(text)} and, for pages, pictures that are markup already.
 */
final class Templates {
    private static final Version VERSION = new Version(2, 3, 35);

    private final Configuration configuration;

    Templates() {
        Configuration c = new Configuration(VERSION);
        c.setTemplateLoader(new ClassTemplateLoader(Templates.class, "/templates"));
        c.setOutputFormat(HTMLOutputFormat.INSTANCE);
        c.setRecognizeStandardFileExtensions(true);
        c.setDefaultEncoding("UTF-8");
        c.setURLEscapingCharset("UTF-8");
        c.setLocale(Locale.ROOT);
        c.setNumberFormat("computer");
        c.setBooleanFormat("c");
        c.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        c.setLogTemplateExceptions(false);
        c.setWrapUncheckedExceptions(true);
        c.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        c.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        DefaultObjectWrapperBuilder wrapper = new DefaultObjectWrapperBuilder(VERSION);
        wrapper.setMemberAccessPolicy(new RecordsOnly());
        c.setObjectWrapper(wrapper.build());
        c.setSharedVariable(
                "markdown",
                (TemplateMethodModelEx)
                        arguments -> markup(Markdown.html(arguments.get(0).toString())));
        configuration = c;
    }

    /**
     * Reads templates, so that they need not be read when they are filled.
     *
     * @param names without their ending
     * @throws IllegalStateException naming the template, if one is missing or wrong
     */
    void read(List<String> names) {
        names.forEach(this::template);
    }

    private Template template(String name) {
        try {
            return configuration.getTemplate(name + ".ftlh");
        } catch (IOException e) {
            throw wrong(name, e);
        }
    }

    private static IllegalStateException wrong(String name, Exception e) {
        return new IllegalStateException("template " + name + ".ftlh: " + e.getMessage(), e);
    }

    /**
     * Fills a template.
     *
     * @param name without its ending
     * @param values what it may use
     * @throws IllegalStateException naming the template, if it is missing or wrong
     */
    String fill(String name, Map<String, ?> values) {
        StringWriter page = new StringWriter();
        try {
            template(name).process(values, page);
        } catch (IOException | TemplateException e) {
            throw wrong(name, e);
        }
        return page.toString();
    }

    /** HTML that a template writes as it is. */
    static TemplateHTMLOutputModel markup(String html) {
        try {
            return HTMLOutputFormat.INSTANCE.fromMarkup(html);
        } catch (TemplateModelException e) {
            throw new IllegalStateException("markup is taken as it is", e);
        }
    }

    /** Templates read the components of records, and reach no other method of any class. */
    private static final class RecordsOnly implements MemberAccessPolicy {
        @Override
        public ClassMemberAccessPolicy forClass(Class<?> type) {
            Set<Method> accessors = accessors(type);
            return new ClassMemberAccessPolicy() {
                @Override
                public boolean isMethodExposed(Method method) {
                    return accessors.contains(method);
                }

                @Override
                public boolean isConstructorExposed(Constructor<?> constructor) {
                    return false;
                }

                @Override
                public boolean isFieldExposed(Field field) {
                    return false;
                }
            };
        }

        private static Set<Method> accessors(Class<?> type) {
            return type.isRecord()
                    ? Arrays.stream(type.getRecordComponents())
                            .map(RecordComponent::getAccessor)
                            .collect(Collectors.toUnmodifiableSet())
                    : Set.of();
        }

        @Override
        public boolean isToStringAlwaysExposed() {
            return true;
        }
    }
}
