namespace Ringwright.Core.Planning;

/// <summary>
/// Puts work in an order quickly: one task after the other, each as early as it can, the one with the longest way to the end first.
/// (Serial schedule generation; Kolisch 1996, from memory.) Deterministic; good, not always best: <see cref="WorkSchedule.LowerBound"/> says how good.
/// </summary>
public static class ListScheduler
{
    /// <summary>An order of the work.</summary>
    public static WorkSchedule Of(WorkProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        int[] tails = problem.Tails(), waiting = [.. problem.Tasks.Select(t => t.After.Distinct().Count())];
        var ready = new PriorityQueue<int, (int, int)>();
        ILookup<int, int> next = problem.Tasks.SelectMany((t, i) => t.After.Distinct().Select(a => (Before: a, Task: i))).ToLookup(p => p.Before, p => p.Task);
        void Ready(int task) => ready.Enqueue(task, (-tails[task], task));
        for (int i = 0; i < waiting.Length; i++)
            if (waiting[i] == 0) Ready(i);
        List<int> order = [];
        while (ready.TryDequeue(out int task, out _))
        {
            order.Add(task);
            foreach (int after in next[task])
                if (--waiting[after] == 0) Ready(after);
        }

        return InOrder(problem, order);
    }

    /// <summary>The tasks put in one after the other in the given order, each as early as what is in already lets it.</summary>
    /// <param name="problem">The work.</param>
    /// <param name="order">All tasks, each behind those it comes after.</param>
    public static WorkSchedule InOrder(WorkProblem problem, IEnumerable<int> order)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(order);
        int[] starts = new int[problem.Tasks.Length];
        var taken = problem.Resources.Select(r => new Taken(r)).ToArray();
        foreach (int task in order)
        {
            WorkTask work = problem.Tasks[task];
            starts[task] = EarliestFrom(work.After.Select(a => starts[a] + problem.Tasks[a].Length).DefaultIfEmpty(0).Max(), work, taken);
            foreach (ResourceUse use in work.Uses) taken[use.Resource].Add(starts[task], use);
        }

        return new(problem, [.. starts], problem.LowerBound());
    }

    private static int EarliestFrom(int start, WorkTask work, Taken[] taken)
    {
        while (true)
        {
            int next = start;
            foreach (ResourceUse use in work.Uses) next = taken[use.Resource].Earliest(next, use);
            if (next == start) return start;
            start = next;
        }
    }

    /// <summary>How much of one resource is in use: steps at which that changes, rising.</summary>
    private sealed class Taken(WorkResource resource)
    {
        private readonly SortedList<int, int> _level = new() { [0] = 0 };
        // From one minute to another there is no room for such a use, and none will come: the longest stretch that was found.
        private readonly Dictionary<(int Length, int Amount), (int From, int To)> _full = [];

        public void Add(int start, ResourceUse use)
        {
            if (use.Length == 0) return;
            Part(start);
            Part(start + use.Length);
            for (int i = _level.IndexOfKey(start); _level.Keys[i] < start + use.Length; i++) _level.SetValueAtIndex(i, _level.Values[i] + use.Amount);
        }

        public int Earliest(int start, ResourceUse use)
        {
            if (use.Length == 0) return start;
            (int from, int to) = _full.GetValueOrDefault((use.Length, use.Amount));
            bool within = start >= from && start <= to;
            int first = within ? from : start;
            start = resource.Open(within ? to : start, use.Length);
            int free = resource.Capacity - use.Amount;
            for (int i = StepAt(start); i < _level.Count && _level.Keys[i] < start + use.Length; i++)
            {
                if (_level.Values[i] <= free) continue;
                start = resource.Open(_level.Keys[i + 1], use.Length);
                i = StepAt(start) - 1;
            }

            if (start - first > to - from) _full[(use.Length, use.Amount)] = (first, start);
            return start;
        }

        private void Part(int minute)
        {
            if (!_level.ContainsKey(minute)) _level.Add(minute, _level.Values[StepAt(minute)]);
        }

        // The last step at or before a minute.
        private int StepAt(int minute)
        {
            int low = 0, high = _level.Count - 1;
            while (low < high)
            {
                int middle = (low + high + 1) / 2;
                if (_level.Keys[middle] <= minute) low = middle;
                else high = middle - 1;
            }

            return low;
        }
    }
}
