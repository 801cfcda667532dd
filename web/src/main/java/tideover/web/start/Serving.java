package tideover.web.start;

import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.core.status.StatusManager;
import java.net.BindException;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.support.DefaultSingletonBeanRegistry;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.support.GenericApplicationContext;
import tideover.engine.assessment.Assessor;
import tideover.files.FieldTable;
import tideover.store.LogFile;
import tideover.store.ServingFile;
import tideover.web.Workbench;
import tideover.web.guard.AccessKey;
import tideover.web.guard.Entrance;
import tideover.web.guard.StartTokens;
import tideover.web.work.RulesByCountry;

/** A workbench that runs. */
public final class Serving implements AutoCloseable {
    /** No status: the process goes on until it is told to stop. */
    static final int RUNNING = -1;

    /** Where it listens unless somebody says otherwise or the port is taken. */
    private static final int USUAL_PORT = 7463;

    private static final String STORE = "store";

    private final ConfigurableApplicationContext context;
    private final int port;
    private final StartTokens tokens;

    private Serving(ConfigurableApplicationContext context, int port, StartTokens tokens) {
        this.context = context;
        this.port = port;
        this.tokens = tokens;
    }

    /** A port somebody asked for is taken. */
    static final class PortTaken extends Exception {
        private static final long serialVersionUID = 1;
        private final int port;

        PortTaken(int port) {
            super("port " + port);
            this.port = port;
        }

        int port() {
            return port;
        }
    }

    /**
     * Serves a store.
     *
     * @param port      where to listen; without one at the usual place, or where it is free
     * @param firstPage path that start addresses lead to
     */
    static Serving start(Opened opened, @Nullable Integer port, String firstPage) throws PortTaken {
        try {
            return start(opened, port == null ? USUAL_PORT : port.intValue(), new StartTokens(firstPage));
        } catch (PortTaken taken) {
            if (port != null) throw taken;
            return start(opened, 0, new StartTokens(firstPage));
        }
    }

    private static Serving start(Opened opened, int port, StartTokens tokens) throws PortTaken {
        AccessKey key = AccessKey.random();
        Map<String, Object> settings = new HashMap<>();
        settings.put("server.port", port);
        settings.put("logging.file.name", LogFile.in(opened.folder()).toString());
        settings.put(
                "server.servlet.session.cookie.name",
                "tideover-" + ProcessHandle.current().pid());
        SpringApplication application = new SpringApplication(Workbench.class);
        application.setDefaultProperties(settings);
        application.addInitializers(given -> {
            GenericApplicationContext beans = (GenericApplicationContext) given;
            // Not the context's to close as long as it has not started: the next try needs it.
            beans.getBeanFactory().registerSingleton(STORE, opened.store());
            beans.registerBean(FieldTable.class, opened::fields);
            beans.registerBean(RulesByCountry.class, opened::rules);
            beans.registerBean(Assessor.class, opened.preparation()::assessor);
            beans.registerBean(AccessKey.class, () -> key);
            beans.registerBean(StartTokens.class, () -> tokens);
        });
        ConfigurableApplicationContext context;
        try {
            context = application.run();
        } catch (RuntimeException e) {
            if (isPortTaken(e)) throw new PortTaken(port);
            throw e;
        }
        ((DefaultSingletonBeanRegistry) context.getBeanFactory()).registerDisposableBean(STORE, opened.store()::close);
        quietLog();
        int listening = Objects.requireNonNull(((ServletWebServerApplicationContext) context).getWebServer())
                .getPort();
        try {
            new ServingFile(listening, key.text()).write(opened.folder());
        } catch (RuntimeException e) {
            // It would serve nobody who asks for it.
            context.close();
            throw e;
        }
        context.addApplicationListener(event -> {
            if (event instanceof ContextClosedEvent) ServingFile.remove(opened.folder());
        });
        return new Serving(context, listening, tokens);
    }

    /** What troubles the log itself, such as a full disk, would land on the terminal as a stack trace. */
    private static void quietLog() {
        if (!(LoggerFactory.getILoggerFactory() instanceof LoggerContext logs)) return;
        StatusManager troubles = logs.getStatusManager();
        troubles.getCopyOfStatusListenerList().forEach(troubles::remove);
    }

    private static boolean isPortTaken(Throwable trouble) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause())
            if (cause instanceof PortInUseException || cause instanceof BindException) return true;
        return false;
    }

    /** Where it listens. */
    public int port() {
        return port;
    }

    /** One of its parts. */
    <T> T part(Class<T> type) {
        return context.getBean(type);
    }

    /** A start address that lets in once. */
    public String address() {
        return Entrance.address(port, tokens.issue());
    }

    @Override
    public void close() {
        context.close();
    }
}
