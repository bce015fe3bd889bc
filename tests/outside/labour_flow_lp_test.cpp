// The bound against a linear program, written from what a plan may do, gang by gang, and
// solved by GLPK's simplex method.

#include "core/crews/labour_flow.h"
#include "tests/support/crew_instances.h"

#include <glpk.h>
#include <gtest/gtest.h>

#include <map>
#include <vector>

namespace topwire::testing {

namespace {

/// Columns are worker-seconds of a job by a gang on a day.
class LabourProgram {
public:
  explicit LabourProgram(const CrewProblem& problem)
      : problem_{problem}, program_{glp_create_prob()} {
    glp_set_obj_dir(program_, GLP_MIN);
    addGangDays();
    for (const CrewJob& job : problem.jobs) addJob(job);
    glp_load_matrix(program_,
                    static_cast<int>(rowOf_.size()) - 1,
                    rowOf_.data(),
                    columnOf_.data(),
                    factor_.data());
  }

  ~LabourProgram() { glp_delete_prob(program_); }

  LabourProgram(const LabourProgram&) = delete;
  LabourProgram& operator=(const LabourProgram&) = delete;

  double least() {
    glp_smcp how;
    glp_init_smcp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.presolve = GLP_ON;
    EXPECT_EQ(glp_simplex(program_, &how), 0);
    EXPECT_EQ(glp_get_status(program_), GLP_OPT);
    return glp_get_obj_val(program_);
  }

private:
  int addRow(int kind, double least, double most) {
    const int row = glp_add_rows(program_, 1);
    glp_set_row_bnds(program_, row, kind, least, most);
    return row;
  }

  int addColumn(double cost) {
    const int column = glp_add_cols(program_, 1);
    glp_set_col_bnds(program_, column, GLP_LO, 0, 0);
    glp_set_obj_coef(program_, column, cost);
    return column;
  }

  void enter(int row, int column) {
    rowOf_.push_back(row);
    columnOf_.push_back(column);
    factor_.push_back(1);
  }

  void addGangDays() {
    for (const Gang& gang : problem_.gangs)
      for (int day = 0; day < problem_.days; ++day) {
        const auto all =
            static_cast<double>(gang.workersOn(day) * problem_.lengthOf(gang, day));
        const double kept = std::min(all, static_cast<double>(gang.keptOn(day)));
        allRows_.push_back(addRow(GLP_UP, 0, all));
        otherRows_.push_back(addRow(GLP_UP, 0, all - kept));
      }
  }

  void addJob(const CrewJob& job) {
    const auto work = static_cast<double>(job.work());
    const int whole = addRow(GLP_FX, work, work);
    enter(whole, addColumn(static_cast<double>(job.leftUndone)));
    for (int day = 0; day < problem_.days; ++day) {
      if (!job.isOpenOn(day)) continue;
      const int room = addRow(GLP_UP, 0, static_cast<double>(problem_.roomFor(job, day)));
      for (std::size_t gang = 0; gang < problem_.gangs.size(); ++gang) {
        if (!problem_.gangs[gang].hasSkill(job.skill)) continue;
        const int column = addColumn(static_cast<double>(job.lateOn(day)));
        const std::size_t gangDay = gang * static_cast<std::size_t>(problem_.days)
                                    + static_cast<std::size_t>(day);
        enter(whole, column);
        enter(room, column);
        enter(allRows_[gangDay], column);
        if (!job.young) enter(otherRows_[gangDay], column);
      }
    }
  }

  const CrewProblem& problem_;
  glp_prob* program_;
  std::vector<int> allRows_;
  std::vector<int> otherRows_;
  // GLPK counts from 1.
  std::vector<int> rowOf_{0};
  std::vector<int> columnOf_{0};
  std::vector<double> factor_{0};
};

void expectSame(const CrewProblem& problem) {
  const LabourFlow flow = solveLabourFlow(problem, dayRanges(problem.days));
  const double least = LabourProgram{problem}.least();
  EXPECT_NEAR(static_cast<double>(flow.bound), least, 1e-7 * std::max(1e6, least));
}

}  // namespace

TEST(LabourFlowProgram, ofOddProblemsHasTheSameBound) {
  for (std::uint64_t seed = 1; seed <= 80; ++seed) {
    SCOPED_TRACE(seed);
    expectSame(oddProblem(seed));
  }
}

TEST(LabourFlowProgram, ofOrchardsHasTheSameBound) {
  for (const double load : {0.8, 1.1, 1.4}) {
    SCOPED_TRACE(load);
    expectSame(orchardProblem({12, 56, load, 3}));
  }
}

}  // namespace topwire::testing
