package org.washwright.drools;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the compiler made of one text.
 *
 * @param models names of the classes that hold the rules
 * @param classes bytes of every class, by name
 */
record CompiledUnit(List<String> models, Map<String, byte[]> classes) {

    /** Keeps ordered copies. */
    CompiledUnit {
        models = List.copyOf(models);
        classes = new TreeMap<>(classes);
    }

    /** Everything in one array, the same for the same content. */
    byte[] bytes() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(models.size());
            for (String model : models) {
                out.writeUTF(model);
            }
            out.writeInt(classes.size());
            for (Map.Entry<String, byte[]> entry : classes.entrySet()) {
                out.writeUTF(entry.getKey());
                out.writeInt(entry.getValue().length);
                out.write(entry.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /**
     * Reads {@link #bytes()}.
     *
     * @throws IOException when they are cut short or hold something else
     */
    static CompiledUnit of(byte[] bytes) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        String[] models = new String[count(in, bytes.length)];
        for (int i = 0; i < models.length; i++) {
            models[i] = in.readUTF();
        }
        Map<String, byte[]> classes = new TreeMap<>();
        int n = count(in, bytes.length);
        for (int i = 0; i < n; i++) {
            String name = in.readUTF();
            byte[] body = new byte[count(in, bytes.length)];
            in.readFully(body);
            classes.put(name, body);
        }
        return new CompiledUnit(List.of(models), classes);
    }

    private static int count(DataInputStream in, int most) throws IOException {
        int n = in.readInt();
        if (n < 0 || n > most) {
            throw new IOException("a count of " + n + " in " + most + " bytes");
        }
        return n;
    }
}
