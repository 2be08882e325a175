package org.washwright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.assessment.Asked;
import org.washwright.cases.CaseOfAnswer;
import org.washwright.library.Evaluation;
import org.washwright.rule.Edition;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Writes the answer to a task as a reference case. */
@Command(
        name = "keep-case",
        mixinStandardHelpOptions = true,
        description = "Answers a task and writes it with what came of it as a reference case, a file for the folder"
                + " \"cases\" of an edition. Look at it before it counts.")
final class KeepCaseCommand implements Callable<Integer> {

    @CommandLine.Mixin
    private AskedTask asked = new AskedTask();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Optional<AskedTask.Ready> ready = asked.read(err);
        Optional<Evaluation.Answered> answered = ready.flatMap(r -> r.answered(err));
        if (answered.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        Edition edition = ready.orElseThrow().evaluator().edition();
        PrintWriter out = spec.commandLine().getOut();
        out.print(CaseOfAnswer.yaml(
                answered.get().answer(),
                Asked.of(answered.get().answer().request(), edition.catalogue()),
                edition,
                answered.get().title()));
        out.flush();
        return ExitCode.OK;
    }
}
