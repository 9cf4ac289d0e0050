// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/distribution.h"

#include "core/measure/inputs.h"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/binomial.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <cmath>
#include <numbers>

namespace proofwalk::measure {
namespace {

namespace policies = boost::math::policies;

// No exception: what is checked beforehand cannot fail, and what grows too large comes back as infinity.
using Quiet =
    policies::policy<policies::domain_error<policies::ignore_error>, policies::pole_error<policies::ignore_error>,
                     policies::overflow_error<policies::ignore_error>,
                     policies::evaluation_error<policies::ignore_error>>;

Result<void> checkProbability(double probability)
{
    if (probability > 0 && probability < 1) return {};
    return outOfRange("probability", probability, "above 0 and below 1");
}

} // namespace

double normalBelow(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

Result<double> normalQuantile(double probability)
{
    if (auto sound = checkProbability(probability); !sound) return passOn(sound);
    return boost::math::quantile(boost::math::normal_distribution<double, Quiet>(), probability);
}

Result<double> studentQuantile(double probability, double degreesOfFreedom)
{
    if (auto sound = checkProbability(probability); !sound) return passOn(sound);
    if (!(degreesOfFreedom >= 1)) return outOfRange("degrees of freedom", degreesOfFreedom, "1 or more");
    return boost::math::quantile(boost::math::students_t_distribution<double, Quiet>(degreesOfFreedom), probability);
}

Result<double> betaQuantile(double probability, double a, double b)
{
    if (auto sound = checkProbability(probability); !sound) return passOn(sound);
    for (const double shape : {a, b})
        if (!(shape > 0 && shape <= 1e7)) return outOfRange("shape", shape, "above 0 to 1e7");
    return boost::math::quantile(boost::math::beta_distribution<double, Quiet>(a, b), probability);
}

Result<double> binomialAtMost(int hits, int tries, double chance)
{
    if (auto sound = checkWithin("tries", tries, 1, 1e6); !sound) return passOn(sound);
    if (auto sound = checkWithin("hits", hits, 0, tries); !sound) return passOn(sound);
    if (auto sound = checkWithin("chance", chance, 0, 1); !sound) return passOn(sound);
    return boost::math::cdf(boost::math::binomial_distribution<double, Quiet>(tries, chance), hits);
}

} // namespace proofwalk::measure
