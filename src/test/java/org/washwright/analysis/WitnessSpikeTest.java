package org.washwright.analysis;
import java.util.*;
import org.junit.jupiter.api.Test;
import org.washwright.generate.Starter;
import org.washwright.rule.*;
import org.washwright.task.TaskWriter;
class WitnessSpikeTest {
  @Test void x() {
    Edition e = Starter.edition();
    Choices c = new Choices(e);
    WitnessSearch s = new WitnessSearch(e, c, "2026-11-25", 3000);
    int miss=0;
    for (Rule r : e.rules()) {
      long t=System.nanoTime();
      var f = s.fires(List.of(r), x -> true);
      long ms=(System.nanoTime()-t)/1000000;
      if (f.isEmpty()) miss++;
      System.out.println("RULE "+r.id()+" "+ms+" ms "+f.map(x->TaskWriter.yaml(x.task(), e, "").replace("\n"," ; ")).orElse("NONE"));
    }
    System.out.println("MISS "+miss+" of "+e.rules().size());
  }
}
