using System.Diagnostics;

namespace Ringwright.Web.Tests.Packaging;

/// <summary>Which licences the packages are under. Needs the whole solution built, as the test command does.</summary>
public class LicenceTests
{
    [Fact]
    public async Task The_list_is_as_the_build_resolved_it_and_all_are_allowed()
    {
        (int code, string said) = await Node("licences.mjs", "--check");
        Assert.True(code == 0, said);
    }

    [Fact]
    public async Task Only_expressions_that_are_met_pass()
    {
        string[] pass = ["MIT", "MIT AND OFL-1.1", "MS-PL OR Apache-2.0", "GPL-3.0-only OR MIT"];
        string[] fail = ["", "MIT AND GPL-3.0-only", "GPL-2.0-only WITH Classpath-exception-2.0", "(MIT OR GPL-3.0-only)", "AGPL-3.0-only", "MPL-2.0", "UNLICENSED"];
        string asked = string.Join(',', pass.Concat(fail).Select(e => $"'{e}'"));
        (int code, string said) = await Node("--input-type=module", "--eval", $"import {{ allowed, isAllowed }} from './packaging/allowed.mjs'; console.log([{asked}].filter(e => isAllowed(e, allowed)).join('|'))");
        Assert.Equal((0, string.Join('|', pass)), (code, said.Trim()));
    }

    private static async Task<(int Code, string Said)> Node(params string[] arguments)
    {
        using Process node = Process.Start(new ProcessStartInfo("node", arguments) { WorkingDirectory = SolutionFolder.Path, RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> output = node.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken), errors = node.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await node.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (node.ExitCode, await output + await errors);
    }
}
