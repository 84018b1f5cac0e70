using Ringwright.Docs;

namespace Ringwright.Cli.Tests;

public class SciencePageTests
{
    [Fact]
    public void The_page_on_the_science_says_what_the_program_computes() => Assert.Equal(
        SciencePage.Write(ExamplePlans.In(Path.Combine(SolutionFolder.Path, "examples"))),
        File.ReadAllText(Path.Combine(SolutionFolder.Path, "docs", "science.md")));
}
