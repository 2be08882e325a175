package org.washwright.batch;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;

/** What a run has done so far. Written by the run, read by whoever shows progress. */
public final class Tally {

    private final Map<Status, AtomicLong> byStatus = new EnumMap<>(Status.class);
    private final AtomicLong kept = new AtomicLong();
    private final AtomicLong judged = new AtomicLong();
    private volatile double share = RecordSource.UNKNOWN;

    Tally() {
        for (Status status : Status.values()) {
            byStatus.put(status, new AtomicLong());
        }
    }

    void done(Status status, boolean fromBefore) {
        byStatus.get(status).incrementAndGet();
        if (fromBefore) {
            kept.incrementAndGet();
        }
    }

    void judgedOne() {
        judged.incrementAndGet();
    }

    void taken(double shareOfInput) {
        share = shareOfInput;
    }

    /** Records of one status, those of an earlier run included. */
    public long count(Status status) {
        return byStatus.get(status).get();
    }

    /** Records whose line is written, those of an earlier run included. */
    public long done() {
        return byStatus.values().stream().mapToLong(AtomicLong::get).sum();
    }

    /** Records whose line an earlier run wrote. */
    public long kept() {
        return kept.get();
    }

    /** Answers that were also given by compiled rules. */
    public long judged() {
        return judged.get();
    }

    /** How much of the input has been taken, 0 to 1; negative when the whole is not known. */
    public double share() {
        return share;
    }
}
