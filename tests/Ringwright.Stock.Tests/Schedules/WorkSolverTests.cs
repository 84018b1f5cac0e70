using CsCheck;
using Ringwright.Core.Planning;
using Ringwright.Stock.Schedules;

namespace Ringwright.Stock.Tests.Schedules;

public class WorkSolverTests
{
    // Six jobs on six machines, machine and time in turn: Fisher and Thompson 1963, "ft06", optimum 55 (from memory).
    private static readonly int[][] Ft06 =
    [
        [2, 1, 0, 3, 1, 6, 3, 7, 5, 3, 4, 6],
        [1, 8, 2, 5, 4, 10, 5, 10, 0, 10, 3, 4],
        [2, 5, 3, 4, 5, 8, 0, 9, 1, 1, 4, 7],
        [1, 5, 0, 5, 2, 5, 3, 3, 4, 8, 5, 9],
        [2, 9, 1, 3, 4, 5, 5, 4, 0, 3, 3, 1],
        [1, 3, 3, 3, 5, 9, 0, 10, 4, 4, 2, 1],
    ];

    private static readonly Gen<WorkTask> AnyTask =
        from hands in Gen.Int[1, 5]
        from clamped in Gen.Int[0, 9]
        from rest in Gen.Int[0, 4]
        from amount in Gen.Int[1, 2]
        from before in Gen.Int[-3, 4]
        select new WorkTask(hands + clamped + rest, [new(0, hands), .. clamped == 0 ? [] : new ResourceUse[] { new(1, hands + clamped, amount) }], before < 0 ? [] : [before]);

    [Fact]
    public void A_published_job_shop_is_solved_to_its_optimum()
    {
        WorkTask[] tasks = [.. Ft06.SelectMany((job, j) => Enumerable.Range(0, 6).Select(i => new WorkTask(job[(2 * i) + 1], [new(job[2 * i], job[(2 * i) + 1])], i == 0 ? [] : [(6 * j) + i - 1])))];
        WorkSchedule schedule = WorkSolver.Solve(new(Enumerable.Range(0, 6).Select(m => new WorkResource($"machine {m}", 1)), tasks));
        Assert.Equal(55, schedule.Makespan);
        Assert.True(schedule.IsShortest);
        Assert.True(schedule.IsFeasible());
    }

    // Each task as early as it can be, in every order there is: one of these schedules is best.
    [Fact]
    public void Small_work_is_done_as_quickly_as_the_best_of_all_orders() => Gen.Select(AnyTask.Array[1, 6], Gen.Int[2, 3], Gen.Bool).Sample((any, clamps, byDay) =>
    {
        var problem = Problem(any, clamps, byDay);
        int best = Orders(problem).Min(order => ListScheduler.InOrder(problem, order).Makespan);
        WorkSchedule schedule = WorkSolver.Solve(problem);
        Assert.True(schedule.IsFeasible());
        Assert.Equal(best, schedule.Makespan);
        Assert.True(schedule.IsShortest);
        Assert.InRange(problem.LowerBound(), 0, best);
    }, iter: 40);

    [Fact]
    public void The_quick_order_can_be_kept_and_is_never_under_the_bound() => Gen.Select(AnyTask.Array[1, 60], Gen.Int[2, 3], Gen.Bool).Sample((any, clamps, byDay) =>
    {
        WorkSchedule schedule = ListScheduler.Of(Problem(any, clamps, byDay));
        Assert.True(schedule.IsFeasible());
        Assert.InRange(schedule.LowerBound, 0, schedule.Makespan);
    });

    // What is known to be full is not looked through again; minute by minute it must come to the same.
    [Fact]
    public void Put_in_one_after_the_other_each_task_begins_at_the_first_minute_at_which_it_can() => Gen.Select(AnyTask.Array[1, 60], Gen.Int[2, 3], Gen.Bool).Sample((any, clamps, byDay) =>
    {
        var problem = Problem(any, clamps, byDay);
        WorkSchedule schedule = ListScheduler.InOrder(problem, Enumerable.Range(0, problem.Tasks.Length));
        for (int task = 0; task < problem.Tasks.Length; task++)
        {
            WorkTask work = problem.Tasks[task];
            int start = work.After.Select(a => schedule.Starts[a] + problem.Tasks[a].Length).DefaultIfEmpty(0).Max();
            while (!work.Uses.All(use => HasRoom(use, start, task))) start++;
            Assert.Equal(start, schedule.Starts[task]);
        }

        bool HasRoom(ResourceUse use, int start, int task) =>
            problem.Resources[use.Resource].Open(start, use.Length) == start
            && Enumerable.Range(start, use.Length).All(minute => use.Amount + Enumerable.Range(0, task).Sum(t => problem.Tasks[t].Uses.Where(u => u.Resource == use.Resource && schedule.Starts[t] <= minute && minute < schedule.Starts[t] + u.Length).Sum(u => u.Amount)) <= problem.Resources[use.Resource].Capacity);
    });

    [Fact]
    public void Same_work_same_order()
    {
        WorkTask[] any = [.. Enumerable.Range(0, 30).Select(i => new WorkTask(20 + (i % 7), [new(0, 3 + (i % 4)), new(1, 12 + (i % 5))], i % 3 == 0 ? [] : [i - 1]))];
        Assert.Equal(WorkSolver.Solve(Problem(any, 2, false)).Starts, WorkSolver.Solve(Problem(any, 2, false)).Starts);
    }

    [Fact]
    public void Work_that_cannot_be_done_is_refused()
    {
        WorkResource[] hands = [new("hands", 1) { Session = 10 }];
        Assert.Throws<ArgumentException>(() => new WorkProblem(hands, [new WorkTask(20, [new(0, 11)], [])]));
        Assert.Throws<ArgumentException>(() => new WorkProblem(hands, [new WorkTask(20, [new(0, 5, 2)], [])]));
        Assert.Throws<ArgumentException>(() => new WorkProblem(hands, [new WorkTask(20, [], [0])]));
    }

    // Work that comes after an earlier task keeps doing so.
    private static WorkProblem Problem(WorkTask[] any, int clamps, bool byDay) => new(
        [new("hands", 1) { Session = byDay ? 9 : null }, new("clamps", clamps)],
        any.Select((t, i) => t with { After = [.. t.After.Where(a => a < i)] }));

    private static IEnumerable<int[]> Orders(WorkProblem problem)
    {
        return From([]);

        IEnumerable<int[]> From(int[] begun)
        {
            if (begun.Length == problem.Tasks.Length)
            {
                yield return begun;
                yield break;
            }

            for (int i = 0; i < problem.Tasks.Length; i++)
                if (!begun.Contains(i) && problem.Tasks[i].After.All(begun.Contains))
                    foreach (int[] order in From([.. begun, i])) yield return order;
        }
    }
}
