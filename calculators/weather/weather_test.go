package weather

import (
	"testing"

	"coursebook/calculators/proof"
)

const publishedDir = "../../testdata/published"

func TestEvaporationProof(t *testing.T) { proof.Calculator(t, Evaporation, publishedDir) }
func TestMixProof(t *testing.T)         { proof.Calculator(t, MixTemp, publishedDir) }
func TestColdProof(t *testing.T)        { proof.Calculator(t, ColdWeather, publishedDir) }
func TestHotProof(t *testing.T)         { proof.Calculator(t, HotWeather, publishedDir) }
func TestSetProof(t *testing.T)         { proof.Calculator(t, SettingTime, publishedDir) }
