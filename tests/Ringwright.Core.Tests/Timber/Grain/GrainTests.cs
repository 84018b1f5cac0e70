using Ringwright.Core.Geometry;
using Ringwright.Core.Timber;
using Ringwright.Core.Timber.Grain;

namespace Ringwright.Core.Tests.Timber.Grain;

/// <summary>How woods look and where boards lay in their trees: made up, but always the same and never impossible.</summary>
public class GrainTests
{
    // Porosity classes as wood anatomy gives them: Wood Handbook FPL-GTR-190, chapters 2 and 3, from memory.
    [Theory]
    [InlineData("oak", Pores.RingPorous)]
    [InlineData("red oak", Pores.RingPorous)]
    [InlineData("ash", Pores.RingPorous)]
    [InlineData("elm", Pores.RingPorous)]
    [InlineData("hickory", Pores.RingPorous)]
    [InlineData("walnut", Pores.Graded)]
    [InlineData("butternut", Pores.Graded)]
    [InlineData("maple", Pores.Diffuse)]
    [InlineData("cherry", Pores.Diffuse)]
    [InlineData("beech", Pores.Diffuse)]
    [InlineData("birch", Pores.Diffuse)]
    [InlineData("basswood", Pores.Diffuse)]
    public void Pores_lie_as_the_anatomy_of_the_wood_says(string wood, Pores pores) =>
        Assert.Equal(pores, GrainLook.Of(SpeciesTable.Standard.FindOrAssume(wood)).Pores);

    [Fact]
    public void Every_wood_of_the_table_has_a_look_and_every_look_is_of_a_wood()
    {
        Assert.Empty(SpeciesTable.Standard.All.Select(s => s.Name).Except(GrainLooks.ByName.Keys, StringComparer.OrdinalIgnoreCase));
        Assert.Empty(GrainLooks.ByName.Keys.Except(SpeciesTable.Standard.All.Select(s => s.Name), StringComparer.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_wood_nobody_knows_looks_middling() =>
        Assert.Equal(GrainLooks.Middling, GrainLook.Of(SpeciesTable.Standard.FindOrAssume("pallet wood")));

    [Fact]
    public void Strengths_are_shares_and_sizes_are_those_of_wood()
    {
        foreach (GrainLook look in GrainLooks.ByName.Values)
        {
            Assert.All([look.RingContrast, look.PoreShare, look.Fibre, look.Rays, look.Curl, look.Ribbon, look.Stripe], s => Assert.InRange(s, 0, 1));
            Assert.InRange(look.RingWidth, 0.5, 8);
            Assert.InRange(look.PoreSize, 0.03, 0.5);
            Assert.InRange(look.RayHeight, 0.2, 50);
        }
    }

    [Fact]
    public void Boards_lie_beside_the_pith_and_nearly_along_it()
    {
        for (int board = 0; board < 500; board++)
        {
            Frame3D tree = TreeInBoard.Of("Ring", "oak", board);
            Assert.Equal(1, tree.X.Length, 1e-12);
            Assert.Equal(0, tree.X.Dot(tree.Y), 1e-12);
            Assert.True((tree.X.Cross(tree.Y) - tree.Z).Length < 1e-12);
            // Within two degrees of the board's edge.
            Assert.InRange(tree.X.X, Math.Cos(double.DegreesToRadians(2)), 1);
            Assert.InRange(Math.Sqrt((tree.Origin.Y * tree.Origin.Y) + (tree.Origin.Z * tree.Origin.Z)), 35, 150);
        }
    }

    // Three of four are nearer to flat-sawn: the pith is more below or above the board than beside it. 500 boards: sd 1.9 percent.
    [Fact]
    public void Most_boards_are_nearer_to_flat_sawn() => Assert.InRange(
        Enumerable.Range(0, 500).Select(b => TreeInBoard.Of("Ring", "oak", b).Origin).Count(o => Math.Abs(o.Z) > Math.Abs(o.Y)) / 500.0, 0.67, 0.83);

    [Fact]
    public void The_same_board_has_the_same_tree_and_another_one_another()
    {
        Frame3D one = TreeInBoard.Of("Ring 1", "walnut", 0);
        Assert.Equal(one, TreeInBoard.Of("Ring 1", "Walnut", 0));
        Assert.NotEqual(one, TreeInBoard.Of("Ring 1", "walnut", 1));
        Assert.NotEqual(one, TreeInBoard.Of("Ring 2", "walnut", 0));
        Assert.NotEqual(one, TreeInBoard.Of("Ring 1", "maple", 0));
    }
}
