package tideover.web.guard;

import java.util.ArrayDeque;
import java.util.Deque;

/** Tokens of start addresses: each opens the door once. */
public final class StartTokens {
    /** Older ones lapse: nobody uses the first of many. */
    private static final int MOST = 8;

    private final Deque<String> open = new ArrayDeque<>();

    /** A further token. */
    public synchronized String issue() {
        String token = Secret.random();
        open.addLast(token);
        while (open.size() > MOST) open.removeFirst();
        return token;
    }

    /** Whether this token was open; it no longer is. */
    synchronized boolean use(String token) {
        return open.removeIf(known -> Secret.same(known, token));
    }
}
