// The one file that knows COIN-OR: Clp for the linear programme, Cbc for whole numbers.
#include "libsplice/reel/solver/patterns/master.h"

#include <gsl/assert>

#include <algorithm>
#include <cmath>
#include <coin/CbcEventHandler.hpp>
#include <coin/CbcHeuristic.hpp>
#include <coin/CbcHeuristicDiveCoefficient.hpp>
#include <coin/CbcHeuristicRINS.hpp>
#include <coin/CbcModel.hpp>
#include <coin/ClpSimplex.hpp>
#include <coin/CoinError.hpp>
#include <coin/OsiClpSolverInterface.hpp>

namespace libsplice {

struct Master::Model {
    ClpSimplex simplex;
    std::vector<int> rows;
    std::vector<double> values;
};

namespace {

double bounded(double value) {
    return value >= unbounded ? COIN_DBL_MAX : value;
}

/// Ends a search where someone outside asks for it, or where a plan is good enough.
class Watcher : public CbcEventHandler {
  public:
    explicit Watcher(const Master::WholeSearch& search) : search_(search) {}

    CbcAction event(CbcEvent /*event*/) override {
        const bool stopped = search_.stop != nullptr && search_.stop->load();
        const bool late = search_.deadline && std::chrono::steady_clock::now() >= *search_.deadline;
        const bool enough = model_ != nullptr && model_->getObjValue() <= search_.enough;
        return stopped || late || enough ? CbcEventHandler::stop : noAction;
    }
    [[nodiscard]] CbcEventHandler* clone() const override { return new Watcher(*this); }

  private:
    const Master::WholeSearch& search_;
};

void add_heuristics(CbcModel& model) {
    CbcRounding rounding(model);
    CbcHeuristicDiveCoefficient dive(model);
    CbcHeuristicRINS neighbours(model);
    model.addHeuristic(&rounding);
    model.addHeuristic(&dive);
    model.addHeuristic(&neighbours);
}

void set_limits(CbcModel& model, const Master::WholeSearch& search) {
    model.setLogLevel(0);
    model.setMaximumNodes(search.most_nodes);
    if (search.under < unbounded) {
        model.setCutoff(search.under);
    }
    if (search.deadline) {
        const std::chrono::duration<double> left =
            *search.deadline - std::chrono::steady_clock::now();
        model.setMaximumSeconds(std::max(0.01, left.count()));
    }
}

/// How many columns are whole.
int whole_columns(const Master::WholeSearch& search, int columns) {
    return static_cast<int>(std::min(search.whole_columns, static_cast<std::size_t>(columns)));
}

Master::Whole best_of(const CbcModel& model, const Master::WholeSearch& search) {
    Master::Whole whole;
    whole.ended = model.status() == 0 && model.secondaryStatus() <= 1;
    whole.bound = model.getBestPossibleObjValue();
    if (model.bestSolution() != nullptr) {
        whole.cost = model.getObjValue();
        whole.values.emplace(model.bestSolution(), model.bestSolution() + model.getNumCols());
        const int columns = whole_columns(search, model.getNumCols());
        for (int column = 0; column < columns; ++column) {
            double& value = (*whole.values)[static_cast<std::size_t>(column)];
            value = std::round(value);
        }
    }
    return whole;
}

Master::Whole search_whole(const ClpSimplex& simplex, const Master::WholeSearch& search) {
    ClpSimplex copy(simplex);
    OsiClpSolverInterface solver(&copy, false);
    solver.messageHandler()->setLogLevel(0);
    solver.setHintParam(OsiDoReducePrint, true, OsiHintTry);
    for (int column = 0; column < whole_columns(search, solver.getNumCols()); ++column) {
        solver.setInteger(column);
    }
    CbcModel model(solver);
    set_limits(model, search);
    Watcher watcher(search);
    model.passInEventHandler(&watcher);
    add_heuristics(model);
    model.solver()->messageHandler()->setLogLevel(0);
    model.initialSolve();
    if (!model.isInitialSolveProvenOptimal()) {
        Master::Whole none;
        none.ended = model.isInitialSolveProvenPrimalInfeasible();
        return none;
    }
    model.branchAndBound();
    return best_of(model, search);
}

} // namespace

Master::Master(std::size_t rows) : model_(std::make_unique<Model>()) {
    model_->simplex.setLogLevel(0);
    model_->simplex.resize(static_cast<int>(rows), 0);
}

Master::~Master() = default;

void Master::set_row(std::size_t row, double lowest, double highest) {
    model_->simplex.setRowBounds(static_cast<int>(row),
                                 lowest <= -unbounded ? -COIN_DBL_MAX : lowest, bounded(highest));
}

void Master::add_column(double cost, std::span<const Coefficient> coefficients) {
    model_->rows.clear();
    model_->values.clear();
    for (const Coefficient& coefficient : coefficients) {
        model_->rows.push_back(coefficient.row);
        model_->values.push_back(coefficient.value);
    }
    model_->simplex.addColumn(static_cast<int>(coefficients.size()), model_->rows.data(),
                              model_->values.data(), 0.0, COIN_DBL_MAX, cost);
}

void Master::set_highest(std::size_t column, double highest) {
    model_->simplex.setColumnUpper(static_cast<int>(column), bounded(highest));
}

bool Master::solve() {
    try {
        model_->simplex.primal();
        if (model_->simplex.status() != 0) {
            model_->simplex.allSlackBasis(true);
            model_->simplex.dual();
        }
        return model_->simplex.status() == 0;
    } catch (const CoinError&) {
        return false;
    }
}

double Master::value() const {
    return model_->simplex.objectiveValue();
}

std::span<const double> Master::row_prices() const {
    return {model_->simplex.dualRowSolution(),
            static_cast<std::size_t>(model_->simplex.numberRows())};
}

std::span<const double> Master::column_values() const {
    return {model_->simplex.primalColumnSolution(),
            static_cast<std::size_t>(model_->simplex.numberColumns())};
}

Master::Whole Master::solve_whole(const WholeSearch& search) const {
    try {
        return search_whole(model_->simplex, search);
    } catch (const CoinError&) {
        return {};
    }
}

} // namespace libsplice
