package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.washwright.access.Person;

/** The unit that each person last typed each attribute in, offered first the next time. Values stay as they were given. */
@ApplicationScoped
class UnitChoices {
    private final EntityManager store;

    UnitChoices(EntityManager store) {
        this.store = store;
    }

    /** Units by attribute, for instance {@code part.mass}. */
    @Transactional
    Map<String, String> of(Person by) {
        Map<String, String> units = new TreeMap<>();
        for (Object row : store.createNativeQuery("SELECT attribute, unit FROM unit_choice WHERE account_id = :account")
                .setParameter("account", by.id())
                .getResultList()) {
            Object[] columns = (Object[]) row;
            units.put((String) columns[0], (String) columns[1]);
        }
        return units;
    }

    @Transactional
    void remember(UUID workspace, Person by, Map<String, String> units) {
        units.forEach((attribute, unit) -> store.createNativeQuery(
                        "INSERT INTO unit_choice (workspace_id, account_id, attribute, unit)"
                                + " VALUES (:workspace, :account, :attribute, :unit)"
                                + " ON CONFLICT (account_id, attribute) DO UPDATE SET unit = excluded.unit")
                .setParameter("workspace", workspace)
                .setParameter("account", by.id())
                .setParameter("attribute", attribute)
                .setParameter("unit", unit)
                .executeUpdate());
    }
}
